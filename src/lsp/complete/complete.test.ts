import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { type CompletionItem, CompletionRequest } from 'vscode-languageserver-protocol/node';
import { uriOf } from '../addresses.ts';
import { positionIn } from '../testing/course-folder.ts';
import type { OpenSession } from '../testing/open-session.ts';
import { front, settings, smallCourse } from '../testing/small-course.ts';

const small = smallCourse();
const { textDocument, write, folder } = small;
let session: OpenSession;

beforeAll(async () => {
  session = await small.begin();
});
afterAll(small.end);

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

const labels = (items: readonly CompletionItem[]) => items.map(({ label }) => label);
const newText = (item: CompletionItem | undefined) => item?.textEdit?.newText;

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
    const settingsFile = uriOf(path.join(folder, 'course.yaml'));
    const ask = async (text: string, number: number, file = settingsFile) => {
      await session.change(file, text, number);
      const position = positionIn(text, text, text.length);
      const items = await session.client.sendRequest(CompletionRequest.type, {
        textDocument: { uri: file },
        position,
      });
      return labels((items ?? []) as CompletionItem[]);
    };
    await session.open(settingsFile, settings);
    expect(await ask(`${settings}no`, 2)).toContain('notation');
    expect(await ask(`${settings}rules:\n  move-s`, 3)).toContain('move-suffix');
    expect(await ask(`${settings}rules:\n  move-suffix: `, 4)).toEqual(['error', 'warning', 'off']);
    expect(await ask(`${settings}begins: `, 5)).toContain('end');
    await session.change(settingsFile, settings, 6);
    // A page that is not saved yet.
    const page = uriOf(path.join(folder, 'pages/about.md'));
    await session.open(page, '---\n');
    expect(await ask('---\ntitle: A\nle', 2, page)).toContain('letter');
    expect(await ask('---\ntitle: A\nin: ', 3, page)).toEqual(['head', 'foot', 'nowhere']);
    const text = '---\ntitle: A\n---\n\n';
    expect(await ask(`${text}[there](`, 4, page)).toEqual(
      expect.arrayContaining(['pos:end', 'chapters/1.md']),
    );
    expect(await ask(`${text}\`\`\`moves\n1. d4 d5 2. c`, 5, page)).toContain('c4');
  });
});
