import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type CodeAction, CodeActionRequest } from 'vscode-languageserver-protocol/node';
import { positionIn } from './testing/course-folder.ts';
import type { OpenSession } from './testing/open-session.ts';
import { front, one, smallCourse } from './testing/small-course.ts';

const small = smallCourse();
const { uri, second, textDocument, write } = small;
let session: OpenSession;

beforeAll(async () => {
  session = await small.begin();
});
afterAll(small.end);

describe('findings', () => {
  test('of unsaved text, with its version and what to do; cleared when they are gone', async () => {
    await write(one.replace('3. Nc3', '3. Nd3'));
    const { diagnostics } = await session.findings(uri, small.version());
    const [first] = diagnostics;
    expect(first).toMatchObject({
      code: 'move-illegal',
      source: 'linewright',
      severity: 1,
      range: { start: { line: 10, character: 3 }, end: { line: 10, character: 6 } },
    });
    expect(first?.message).toMatch(/can reach d3\.\nDid you mean/);

    const context = { diagnostics: [] };
    const range = first?.range ?? {
      start: { line: 0, character: 0 },
      end: { line: 0, character: 0 },
    };
    const actions = (await session.client.sendRequest(CodeActionRequest.type, {
      textDocument,
      range,
      context,
    })) as CodeAction[];
    const mend = actions.find(({ title }) => title === 'Play Nc3 instead');
    expect(mend?.edit?.documentChanges).toEqual([
      { textDocument: { uri, version: small.version() }, edits: [{ range, newText: 'Nc3' }] },
    ]);

    await write(one);
    expect((await session.findings(uri, small.version())).diagnostics).toEqual([]);
  });

  test('in other chapters, as a change here makes them; the repair has a title', async () => {
    await write(one.replace('here[gambit', 'here[other').replace('3. Nc3', '4. Nc3'));
    await session.findings(uri, small.version());
    const elsewhere = () => session.found.get(second)?.diagnostics.map(({ code }) => code);
    await expect.poll(elsewhere).toContain('label-unknown');
    expect(session.found.get(second)?.version).toBeUndefined();
    const actions = (await session.client.sendRequest(CodeActionRequest.type, {
      textDocument,
      range: { start: { line: 10, character: 0 }, end: { line: 10, character: 2 } },
      context: { diagnostics: [], only: ['quickfix'] },
    })) as CodeAction[];
    expect(actions.map(({ title }) => title)).toEqual(['Write “3.” instead of “4.”']);
    await write(one);
    await expect.poll(elsewhere).not.toContain('label-unknown');
  });
});

describe('repairs', () => {
  const titles = async (moves: string, words: string, only?: string[]) => {
    const text = `${front}\`\`\`moves\n${moves}\n\`\`\`\n`;
    await write(text);
    const position = positionIn(text, words);
    const actions = (await session.client.sendRequest(CodeActionRequest.type, {
      textDocument,
      range: { start: position, end: position },
      context: { diagnostics: [], ...(only && { only }) },
    })) as CodeAction[];
    return actions.map(({ title }) => title);
  };

  test('what a link was probably meant to name', async () => {
    const moves = '1. e4 e5 2. Nf3 {:here[gambet] [it](pos:gambot)} Nc6 =';
    expect(await titles(moves, 'gambot')).toContain('Write gambet');
  });

  test('what is true instead, what may be said on purpose, what a sentence proves', async () => {
    expect(await titles('1. e4 e5 2. Nf3 {:claim[material +1]} Nc6 =', 'material')).toContain(
      'Claim material 0, which is true',
    );
    expect(await titles('1. e4 e5', 'e5')).toEqual([
      'Say that the line stops here',
      'Allow reply-unanswered here',
    ]);
    const meeting =
      '1. e4 e5 2. Nf3 Nc6 {:here[knights]} 3. Bb5\n```\n\n```moves\n1. Nf3 Nc6 2. e4 e5 3. Bb5';
    expect(await titles(meeting, 'e5 3. Bb5')).toContain('Say that this is knights');
    expect(
      await titles('1. e4 d5 2. exd5 {White is a pawn up.} Qxd5 =', 'White', ['source']),
    ).toEqual(['Add claims behind the sentences that they prove']);
    await write(one);
    await session.findings(uri, small.version());
  });
});
