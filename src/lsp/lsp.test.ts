import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
  type CodeAction,
  CodeActionRequest,
  type CompletionItem,
  CompletionRequest,
  DefinitionRequest,
  DidChangeTextDocumentNotification,
  DocumentRangeFormattingRequest,
  DocumentSymbolRequest,
  FoldingRangeRequest,
  HoverRequest,
  type Location,
  type MarkupContent,
  PrepareRenameRequest,
  ReferencesRequest,
  RenameRequest,
  SemanticTokensRequest,
  type TextEdit,
} from 'vscode-languageserver-protocol/node';
import { uriOf } from './addresses.ts';
import { courseFolder, positionIn } from './testing/course-folder.ts';
import { type OpenSession, openSession } from './testing/open-session.ts';

const one = `---
title: One
---

# The start

\`\`\`moves
1. d4 d5 2. c4 {:here[gambit "The gambit"] A pawn for the centre.
Two lines of it.} e6
  ( 2... c6 3. Nf3 )
3. Nc3
\`\`\`

So \`2.c4 e6\` it is, 𝕏 and [there](pos:end).
`;
const two = `---
title: Two
---

\`\`\`moves from="gambit"
2... Nf6 3. Nc3 {:here[end] :claim[material 0 since gambit]} e6
\`\`\`

\`\`\`moves fen="r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 2 3"
3. Bb5 {:here[pin]} a6 ( 3... Nf6 ) 4. Ba4
\`\`\`
`;
const settings = 'title: A\nid: a\nside: white\ncover: "gambit"\n';

const course = courseFolder({
  'course.yaml': settings,
  'chapters/1.md': one,
  'chapters/2.md': two,
  'notes.md': 'Notes.\n',
});
const uri = uriOf(path.join(course.folder, 'chapters/1.md'));
const second = uriOf(path.join(course.folder, 'chapters/2.md'));
const textDocument = { uri };

let session: OpenSession;
let version = 1;

beforeAll(async () => {
  session = await openSession();
  await session.open(uri, one);
});

afterAll(async () => {
  await session.close();
  course.remove();
});

/** Puts another text in the place of the first chapter. */
async function write(text: string): Promise<void> {
  version += 1;
  await session.change(uri, text, version);
}

const placeOf = ({ uri: file, range }: Location) =>
  `${path.basename(fileURLToPath(file))}:${range.start.line + 1}:${range.start.character + 1}`;

async function completions(text: string, add = text.length): Promise<CompletionItem[]> {
  await write(text);
  const position = positionIn(text, text.slice(0, 20), add);
  const items = await session.client.sendRequest(CompletionRequest.type, {
    textDocument,
    position,
  });
  return ((items ?? []) as CompletionItem[]).sort((a, b) =>
    (a.sortText ?? '') < (b.sortText ?? '') ? -1 : 1,
  );
}

const front = '---\ntitle: One\n---\n\n';
const labels = (items: readonly CompletionItem[]) => items.map(({ label }) => label);
const newText = (item: CompletionItem | undefined) => item?.textEdit?.newText;

describe('findings', () => {
  test('of unsaved text, with its version and what to do; cleared when they are gone', async () => {
    await write(one.replace('3. Nc3', '3. Nd3'));
    const { diagnostics } = await session.findings(uri, version);
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
      { textDocument: { uri, version }, edits: [{ range, newText: 'Nc3' }] },
    ]);

    await write(one);
    expect((await session.findings(uri, version)).diagnostics).toEqual([]);
  });

  test('in other chapters, as a change here makes them; the repair has a title', async () => {
    await write(one.replace('here[gambit', 'here[other').replace('3. Nc3', '4. Nc3'));
    await session.findings(uri, version);
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
    await session.findings(uri, version);
  });
});

describe('completion', () => {
  const moves = (text: string) => completions(`${front}\`\`\`moves\n${text}`);

  test('legal moves behind the position, the course’s own first, in a block that is half written', async () => {
    const [first, ...others] = await moves('1. e4 e5 2. Nf3 Nc6 3. ');
    expect(first).toMatchObject({ label: 'Bb5', detail: 'the course’s advice' });
    expect(newText(first)).toBe('Bb5');
    expect(labels(others)).toContain('Bc4');
    // White's moves after 1.d4 d5: 14 of pawns, 5 of knights, 5 of the bishop, 2 of the queen, 1 of the king.
    expect(await moves('1. d4 d5 2. ')).toHaveLength(27);
  });

  test('with their numbers where these are missing', async () => {
    expect((await moves('1. d4 d5 ')).map(newText)).toContain('2. c4');
    expect((await moves('1. d4 d5 2.')).map(newText)).toContain('c4');
    expect((await moves('1. d4 {text} ')).map(newText)).toContain('1... d5');
    expect((await moves('1. d4 ')).map(newText)).toContain('d5');
  });

  test('in a variation, of the position before its move', async () => {
    expect(labels(await moves('1. d4 d5 2. c4 ( '))).toContain('Nf3');
    expect(labels(await moves('1. d4 d5 ( 1... Nf6 2. c4 ) 2. '))).not.toContain('cxd5');
  });

  test('the range holds what is typed, and what is compared begins with it', async () => {
    const [item] = await moves('1. d4 d5 2. c');
    expect(item?.textEdit).toMatchObject({
      range: { start: { line: 5, character: 12 }, end: { line: 5, character: 13 } },
    });
    expect(item?.filterText).toBe(item?.label);
  });

  test('directives, and in their brackets names, rules and claims that are true there first', async () => {
    expect(labels(await moves('1. d4 {:cl'))).toContain(':claim');
    expect(labels(await moves('1. e4 d5 2. exd5 Qxd5 {:claim['))).toContain('material 0');
    const [first] = await moves('1. e4 d5 2. exd5 {:claim[mater');
    expect(first).toMatchObject({ label: 'material +1', detail: 'true here' });
    expect(labels(await moves('1. d4 {:same['))).toContain('pin');
    expect(labels(await moves('1. d4 {:allow['))).toContain('move-suffix');
  });

  test('in prose: links, and claims of the move shown last', async () => {
    const text = `${front}\`\`\`moves\n1. e4 d5 2. exd5 Nf6\n\`\`\`\n\n`;
    expect(labels(await completions(`${text}[x](pos:`))).toContain('pos:pin');
    const [first] = await completions(`${text}So :claim[mater`);
    expect(first?.label).toBe('material +1');
  });

  test('blocks, their attributes and lines', async () => {
    const [block] = await completions(`${front}\`\`\`mo`);
    expect([block?.label, newText(block)]).toEqual(['moves', 'moves\n\n```']);
    const before = `${front}\`\`\`mo`;
    const [another] = await completions(`${before}\n1. e4\n\`\`\``, before.length);
    expect(newText(another)).toBe('moves');
    expect(labels(await completions(`${front}\`\`\`moves fr`))).toEqual([
      'from',
      'fen',
      'view',
      'learn',
    ]);
    expect(labels(await completions(`${front}\`\`\`moves from="ga`))).toContain('pin');
    const exercise = `${front}\`\`\`exercise at="pin"\nask: Which?\n`;
    expect(labels(await completions(`${exercise}an`))).toContain('answer');
    expect(labels(await completions(`${exercise}answer: 3... a6 4. `))).toContain('Bxc6');
  });

  test('settings and front matter', async () => {
    expect(newText((await completions('---'))[0])).toBe('---\ntitle: \n---\n');
    expect(labels(await completions('---\ntitle: One\nle'))).toContain('learn');
    expect(labels(await completions('---\ntitle: One\nlearn: '))).toEqual(['all', 'main', 'none']);
    const file = uriOf(path.join(course.folder, 'course.yaml'));
    const ask = async (text: string, number: number) => {
      await session.change(file, text, number);
      const position = positionIn(text, text, text.length);
      const items = await session.client.sendRequest(CompletionRequest.type, {
        textDocument: { uri: file },
        position,
      });
      return labels((items ?? []) as CompletionItem[]);
    };
    await session.open(file, settings);
    expect(await ask(`${settings}no`, 2)).toContain('notation');
    expect(await ask(`${settings}rules:\n  move-s`, 3)).toContain('move-suffix');
    expect(await ask(`${settings}rules:\n  move-suffix: `, 4)).toEqual(['error', 'warning', 'off']);
    expect(await ask(`${settings}begins: `, 5)).toContain('end');
    await session.change(file, settings, 6);
  });
});

describe('what stands at a place', () => {
  beforeAll(() => write(one));

  const hover = async (words: string, add = 0) => {
    const found = await session.client.sendRequest(HoverRequest.type, {
      textDocument,
      position: positionIn(one, words, add),
    });
    return (found?.contents as MarkupContent | undefined)?.value ?? '';
  };

  test('a move with its board, the advice, its name and where else it stands', async () => {
    const text = await hover('c4 {');
    expect(text).toContain('**2.c4**');
    expect(text).toContain('4  · · P P · · · ·');
    expect(text).toContain('The course covers 2...e6, 2...c6, 2...Nf6.');
    expect(text).toContain('Named `gambit` (The gambit).');
    expect(text).toMatch(/Also in \[2\.md:\d+\]\(file:/);
    expect(text).toContain('`material 0`');
  });

  test('a link, a move in the prose, a directive, a word of a block', async () => {
    expect(await hover('pos:end', 6)).toContain('**3.Nc3**');
    expect(await hover('2.c4 e6`', 6)).toContain('**2...e6**');
    expect(await hover(':here', 2)).toContain('Names the position');
    expect(await hover('moves', 2)).toContain('Lines of moves');
    expect(await hover('title')).toContain('The title.');
    expect(await hover('The start')).toBe('');
  });

  test('where a name is given, and a move of the prose is played', async () => {
    const ask = (words: string, add: number) =>
      session.client.sendRequest(DefinitionRequest.type, {
        textDocument,
        position: positionIn(one, words, add),
      }) as Promise<Location[]>;
    expect((await ask('pos:end', 5)).map(placeOf)).toEqual(['2.md:6:24']);
    expect((await ask('2.c4 e6`', 6)).map(placeOf)).toEqual(['1.md:9:19']);
  });

  test('the uses of a name everywhere, and the places of a position', async () => {
    const ask = (words: string, add: number) =>
      session.client.sendRequest(ReferencesRequest.type, {
        textDocument,
        position: positionIn(one, words, add),
        context: { includeDeclaration: true },
      }) as Promise<Location[]>;
    expect((await ask('gambit', 1)).map(placeOf)).toEqual([
      '1.md:8:23',
      '2.md:5:16',
      '2.md:6:53',
      'course.yaml:4:9',
    ]);
    expect((await ask('3. Nc3', 4)).map(placeOf)).toEqual(['1.md:11:4']);
  });

  test('the outline, folds and colours', async () => {
    const symbols = await session.client.sendRequest(DocumentSymbolRequest.type, { textDocument });
    expect(symbols).toMatchObject([
      { name: 'The start', children: [{ name: 'moves', children: [{ name: 'gambit' }] }] },
    ]);
    const folds = await session.client.sendRequest(FoldingRangeRequest.type, { textDocument });
    expect(folds?.map(({ startLine, endLine }) => `${startLine}-${endLine}`)).toEqual([
      '0-2',
      '4-13',
      '6-11',
      '7-8',
    ]);
    const tokens = await session.client.sendRequest(SemanticTokensRequest.type, { textDocument });
    // The number 1. of the line 8, and the move d4 behind it, which is advice.
    expect(tokens?.data.slice(0, 10)).toEqual([7, 0, 2, 1, 0, 0, 3, 2, 0, 4]);
  });
});

describe('renaming', () => {
  beforeAll(() => write(one));
  const position = positionIn(one, 'gambit', 2);

  test('across the course, each place once, with versions', async () => {
    const edit = await session.client.sendRequest(RenameRequest.type, {
      textDocument,
      position,
      newName: 'queens-gambit',
    });
    const changed = edit?.documentChanges?.map((change) =>
      'edits' in change
        ? [
            path.basename(fileURLToPath(change.textDocument.uri)),
            change.textDocument.version,
            change.edits.length,
          ]
        : [],
    );
    expect(changed).toEqual([
      ['1.md', version, 1],
      ['2.md', null, 2],
      ['course.yaml', 6, 1],
    ]);
  });

  test('says where it can, and refuses what is no name or is taken', async () => {
    const prepare = (words: string) =>
      session.client.sendRequest(PrepareRenameRequest.type, {
        textDocument,
        position: positionIn(one, words, 2),
      });
    expect(await prepare('gambit')).toMatchObject({ placeholder: 'gambit' });
    expect(await prepare('The start')).toBeNull();
    const to = (newName: string) =>
      session.client.sendRequest(RenameRequest.type, { textDocument, position, newName });
    await expect(to('no name')).rejects.toThrow('is no name');
    await expect(to('end')).rejects.toThrow('named end already');
  });
});

test('formats movetext within a range, and nothing else', async () => {
  const text = `${front}Some   words.\n\n\`\`\`moves\n1.d4   d5 2.c4 {as   it   is}\n e6 3.Nc3 1-0\n\`\`\`\n`;
  await write(text);
  const edits = await session.client.sendRequest(DocumentRangeFormattingRequest.type, {
    textDocument,
    range: { start: { line: 7, character: 0 }, end: { line: 8, character: 0 } },
    options: { tabSize: 2, insertSpaces: true },
  });
  expect(edits?.every(({ range }: TextEdit) => range.start.line === 7)).toBe(true);
  expect(edits?.map((edit: TextEdit) => edit.newText)).toEqual(['1. ', ' ', '2. ']);
});

describe('an editor that does not behave', () => {
  test('positions from nowhere', async () => {
    await write(one);
    const wild = [
      { line: 1e9, character: 5 },
      { line: -3, character: -7 },
      { line: 13, character: 1e9 },
      { line: Number.NaN, character: 0.5 },
    ];
    for (const position of wild) {
      await session.client.sendRequest(HoverRequest.type, { textDocument, position });
      await session.client.sendRequest(CompletionRequest.type, { textDocument, position });
      await session.client.sendRequest(DefinitionRequest.type, { textDocument, position });
    }
    expect(session.logged).toEqual([]);
  });

  test('a change to a text that is not open, and one by ranges out of order', async () => {
    await session.client.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: uriOf('/nowhere/x.md'), version: 2 },
      contentChanges: [{ text: 'x' }],
    });
    version += 1;
    await session.client.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri, version },
      contentChanges: [
        {
          range: { start: { line: 4, character: 11 }, end: { line: 4, character: 2 } },
          text: 'An end',
        },
        // On the result of the first.
        {
          range: { start: { line: 4, character: 2 }, end: { line: 4, character: 4 } },
          text: 'The',
        },
      ],
    });
    const [symbol] =
      (await session.client.sendRequest(DocumentSymbolRequest.type, { textDocument })) ?? [];
    expect(symbol?.name).toBe('The end');
  });

  test('a file of no course is left alone, and that is said once', async () => {
    const stranger = uriOf('/nowhere/stranger.md');
    await session.open(stranger, 'Words.\n');
    const position = { line: 0, character: 2 };
    const found = await session.client.sendRequest(HoverRequest.type, {
      textDocument: { uri: stranger },
      position,
    });
    expect(found).toBeNull();
    expect(session.logged.filter((line) => line.includes('stranger.md'))).toHaveLength(1);
    expect(session.found.has(stranger)).toBe(false);
  });
});
