import path from 'node:path';
import { fileURLToPath } from 'node:url';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import {
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
import { uriOf } from '../addresses.ts';
import { positionIn } from '../testing/course-folder.ts';
import type { OpenSession } from '../testing/open-session.ts';
import { front, one, smallCourse } from '../testing/small-course.ts';

const small = smallCourse();
const { uri, textDocument, write } = small;
let session: OpenSession;

beforeAll(async () => {
  session = await small.begin();
});
afterAll(small.end);

const placeOf = ({ uri: file, range }: Location) =>
  `${path.basename(fileURLToPath(file))}:${range.start.line + 1}:${range.start.character + 1}`;

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
    expect(text).toContain('True here: `en-prise c4`');
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
      ['1.md', small.version(), 1],
      ['2.md', null, 2],
      ['course.yaml', null, 1],
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
    const before = [...session.logged];
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
    expect(session.logged).toEqual(before);
  });

  test('a change to a text that is not open, and one by ranges out of order', async () => {
    await session.client.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri: uriOf('/nowhere/x.md'), version: 2 },
      contentChanges: [{ text: 'x' }],
    });
    await session.client.sendNotification(DidChangeTextDocumentNotification.type, {
      textDocument: { uri, version: small.nextVersion() },
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
