/**
 * PGN into a course and out again. What comes back is compared as trees of moves, glyphs and words;
 * arbitrary trees are legal games, walked at random with chess.js by way of our list of legal moves.
 */
import { execFileSync, spawn } from 'node:child_process';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import fc from 'fast-check';
import { afterAll, describe, expect, test } from 'vitest';
import { checkCourse } from '../../src/check/index.ts';
import { initialPosition, legalMoves, type Position, playMove } from '../../src/chess/index.ts';
import { type Draft, makeDraft, readArchive } from '../../src/import/index.ts';
import { buildCourse } from '../../src/model/index.ts';
import {
  type ArchiveGame,
  makeMovetext,
  type PlainComment,
  type PlainLine,
  type PlainMove,
  type PlainVariation,
  parseGames,
} from '../../src/movetext/index.ts';
import { makePgn } from '../../src/publish/pgn/index.ts';
import { readCourse } from '../../src/read/index.ts';
import { runs } from '../setup/runs.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-pgn-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

async function* partsOf(text: string): AsyncGenerator<ArchiveGame> {
  yield { text, line: 1, tooLong: false };
}

/** What is more than a matter of form: the files of these tests are no model of it. */
const notesOf = ({ notes }: Draft) => notes.filter(({ formal }) => !formal);

const draftOf = (text: string, by: 'game' | 'branch' = 'game') =>
  makeDraft(partsOf(text), { by, side: 'both', title: 'A draft' });

function check({ files }: Draft) {
  const [settings, ...chapters] = files;
  if (settings === undefined) throw new Error('a draft has settings');
  const read = { settings, chapters, games: [], media: [], problems: [] };
  const result = checkCourse(
    buildCourse(readCourse({ ...read, settings: { path: 'course.yaml', text: settings.text } })),
  );
  const errors = result.diagnostics.filter(({ severity }) => severity === 'error');
  expect(
    errors.map(({ message, place }) => `${place.file}:${place.start.line} ${message}`),
  ).toEqual([]);
  expect(result.diagnostics.filter(({ rule }) => rule === 'id-missing')).toEqual([]);
  if (result.checked === undefined) throw new Error('the draft has errors');
  return result.checked;
}

const exportOf = (draft: Draft) => parseGames(makePgn(check(draft)));

/**
 * What must survive: moves, glyphs, variations, and the words of comments with single spaces. The words at a
 * move are one comment before its variations, and a brace in them is a bracket (`strictGame`).
 */
function outline(line: PlainLine): string {
  const words = (comments: readonly PlainComment[]) => {
    const text = comments.map((each) => each.text).join(' ');
    const flat = text.replace(/\{/g, '(').replace(/\}/g, ')').replace(/\s+/g, ' ').trim();
    return flat === '' ? '' : ` {${flat}}`;
  };
  const moves = line.moves.map(({ san, glyphs, after }) => {
    const comments = after.filter((item) => item.type === 'comment');
    const variations = after.filter((item) => item.type === 'variation');
    return [
      ` ${san.text}${glyphs.map(({ nag }) => `$${nag}`).join('')}`,
      words(comments),
      ...variations.map((item) => ` (${outline(item.line)})`),
    ].join('');
  });
  return words(line.before) + moves.join('');
}

/** Choices that a tree of legal moves is made from. */
interface Shape {
  readonly pick: number;
  readonly glyphs: readonly number[];
  readonly after: readonly (string | readonly Shape[])[];
}

const comment = fc
  .array(
    fc.oneof(
      fc.string({ unit: 'grapheme', maxLength: 10 }),
      fc.constantFrom(
        ...[' ', '*', '_', '`', '`1.e4`', '\\', '[', ']', '](', '[a](pos:b)', '[a](b)', ':here[x]'],
        ...[
          '::mark[e4]',
          ':claim',
          '<b>',
          '&amp;',
          '&',
          '{',
          '}',
          '}',
          '|',
          '#',
          '- ',
          '1. ',
          '![',
        ],
        ...[
          '[%clk 0:01:00]',
          '[%cal Gf3e5]',
          '[%x :mark[e4]]',
          '$1',
          ';',
          '(',
          ')',
          '\n',
          '~~~',
          '```',
        ],
        ...[
          'https://example.org/a_b',
          '<https://example.org>',
          'ä',
          '10:30',
          'a:b',
          '[^1]',
          ':é[x]',
        ],
      ),
    ),
    { minLength: 1, maxLength: 8 },
  )
  .map((parts) => parts.join(''));

const { shapes } = fc.letrec<{ shapes: readonly Shape[]; shape: Shape }>((tie) => ({
  shape: fc.record({
    pick: fc.nat(),
    glyphs: fc.array(fc.integer({ min: 0, max: 255 }), { maxLength: 2 }),
    after: fc.array(
      fc.oneof({ maxDepth: 3 }, comment, tie('shapes') as fc.Arbitrary<readonly Shape[]>),
      { maxLength: 2 },
    ),
  }),
  shapes: fc.array(tie('shape') as fc.Arbitrary<Shape>, { minLength: 1, maxLength: 5 }),
}));

function lineOf(list: readonly Shape[], start: Position): PlainLine {
  const moves: PlainMove[] = [];
  let position = start;
  for (const { pick, glyphs, after } of list) {
    const legal = legalMoves(position);
    const chosen = legal[pick % Math.max(1, legal.length)];
    if (chosen === undefined) break;
    const before = position;
    const played = playMove(position, chosen);
    if (!('after' in played)) throw new Error(chosen);
    position = played.after;
    moves.push({
      san: { text: played.san },
      glyphs: glyphs.map((nag) => ({ nag })),
      after: after.flatMap((item): (PlainComment | PlainVariation)[] => {
        if (typeof item === 'string') return [brace(item)];
        const line = lineOf(item, before);
        return line.moves.length === 0 ? [] : [{ type: 'variation', line }];
      }),
    });
  }
  return { before: [], moves };
}

/** With a `}` a comment takes the form that runs to the end of its line. */
function brace(text: string): PlainComment {
  const flat = text.replace(/[\r\n\0]/g, ' ');
  return { type: 'comment', form: flat.includes('}') ? 'line' : 'brace', text: flat };
}

describe('import, then export', () => {
  test('keeps every move, variation, comment and glyph', async () => {
    await fc.assert(
      fc.asyncProperty(shapes, fc.array(comment, { maxLength: 2 }), async (list, words) => {
        const line = { ...lineOf(list, initialPosition), before: words.map(brace) };
        const pgn = makeMovetext({ tags: [{ name: 'White', value: 'A "b" \\' }], line });
        const draft = await draftOf(pgn);
        expect(notesOf(draft)).toEqual([]);
        const games = exportOf(draft);
        expect(games.flatMap(({ problems }) => problems)).toEqual([]);
        expect(games.map((game) => outline(game.line))).toEqual([outline(line)]);
        expect(games[0]?.tags.find(({ name }) => name === 'White')?.value).toBe('A "b" \\');
      }),
      { numRuns: runs(60) },
    );
  });

  test('makes spaces of characters that no course may have', async () => {
    const draft = await draftOf('[White "A\u001b[31m"]\n\n1. e4 {one\u0007two} e5 {\uffff} *');
    expect(exportOf(draft).map(({ line }) => outline(line))).toEqual([' e4 {one two} e5']);
  });

  test('keeps the whole of a deeper tree, in blocks that go on from names', async () => {
    const depth = 100;
    const pgn = `${'1. e4 ('.repeat(depth)}1. d4${')'.repeat(depth)} 1... e5 *`.replaceAll(
      '1. e4 (1. e4',
      '1. e4 (1. c4',
    );
    const draft = await draftOf(pgn);
    expect(notesOf(draft)).toEqual([]);
    const games = exportOf(draft);
    expect(games.length).toBe(Math.ceil((depth + 1) / 41));
    const count = (line: PlainLine): number =>
      line.moves.reduce(
        (sum, { after }) =>
          sum +
          1 +
          after.reduce((own, item) => own + (item.type === 'comment' ? 0 : count(item.line)), 0),
        0,
      );
    expect(games.reduce((sum, { line }) => sum + count(line), 0)).toBe(depth + 2);
  });

  test('of a single game by branch has a chapter for each variation at the first branching', async () => {
    const draft = await draftOf(
      '1. e4 e5 (1... c5 2. Nf3) (1... e6 {solid}) 2. Nf3 Nc6 *',
      'branch',
    );
    expect(draft.files.map((file) => file.path)).toEqual([
      'course.yaml',
      'chapters/01-1-e4-e5-2-nf3-nc6.md',
      'chapters/02-1-e4-c5.md',
      'chapters/03-1-e4-e6.md',
    ]);
    expect(exportOf(draft).map(({ line }) => outline(line))).toEqual([
      ' e4 e5 Nf3 Nc6',
      ' c5 Nf3',
      ' e6 {solid}',
    ]);
  });

  test('of several games by branch parts them after the moves that they share', async () => {
    const draft = await draftOf('1. e4 e5 *\n\n1. e4 c5 2. Nf3 *\n\n1. e4 e5 2. Nf3 *', 'branch');
    expect(draft.files.map((file) => file.path)).toEqual([
      'course.yaml',
      'chapters/01-1-e4-e5.md',
      'chapters/02-1-e4-c5.md',
    ]);
  });
});

describe('what is wrong in a file', () => {
  test('a line is kept up to an illegal move; the rest is text, and told', async () => {
    const draft = await draftOf(
      '[White "A"]\n\n1. e4 e5 (1... c5 2. Ng7 {so} a6) 2. Ke3 {no} Nc6 *\n\n[White "B"]\n\n1. d4 *\n',
    );
    expect(draft.notes.map(({ game, line, text }) => `${game} ${line} ${text}`)).toEqual([
      '1 3 2. Ng7 {so} a6',
      '1 3 2. Ke3 {no} Nc6',
    ]);
    expect(exportOf(draft).map(({ line }) => outline(line))).toEqual([
      ' e4 e5 {[not read: 2. Ke3 (no) Nc6]} ( c5 {[not read: 2. Ng7 (so) a6]})',
      ' d4',
    ]);
  });

  test('names of any length and letters make titles, ids and files that a course can have', async () => {
    const long = '1. Nf3 Nf6 2. Ng1 Ng8 '.repeat(15);
    const pgns = [
      `${long} 31. e4 *\n\n${long} 31. d4 *`,
      `[Event "${'\u{10392}'.repeat(120)}"]\n\n1. e4 *`,
      `[White "${'数'.repeat(220)}"]\n\n1. e4 *`,
    ];
    for (const pgn of pgns) {
      for (const by of ['game', 'branch'] as const) {
        const draft = await draftOf(pgn, by);
        check(draft);
        expect(draft.files.map(({ path: file }) => file).join()).not.toMatch(/\p{Cs}/u);
      }
    }
    const { files } = await draftOf(pgns[0] ?? '', 'branch');
    expect(files.slice(1).map(({ text }) => text.split('\n')[1])).toEqual([
      'title: "… 27...Nf6 28.Ng1 Ng8 29.Nf3 Nf6 30.Ng1 Ng8 31.e4"',
      'title: "… 27...Nf6 28.Ng1 Ng8 29.Nf3 Nf6 30.Ng1 Ng8 31.d4"',
    ]);
  });

  test('what is not read stands on one line, so that no word of it opens a block', async () => {
    const draft = await draftOf('1. e4 e4\r\n~~~moves\r\n2. d5 *');
    expect(exportOf(draft).map(({ line }) => outline(line))).toEqual([
      ' e4 {[not read: e4 ~~~moves 2. d5]}',
    ]);
  });

  test('a game from a FEN that is no position is kept as text', async () => {
    const draft = await draftOf('[SetUp "1"]\n[FEN "8/8/8 w - - 0 1"]\n\n1. e4 ``` *\n');
    expect(draft.notes.map(({ message }) => message).join()).toContain('The FEN is no position');
    expect(draft.files[1]?.text).toContain('1. e4');
    check(draft);
  });

  test('a variation that is never closed, and words that are no moves, are told', async () => {
    const draft = await draftOf('1. e4 (1. d4 d5 *\n\n[White "B"]\n\n1. c4 hello {open\n');
    expect(draft.notes.map(({ game, text }) => `${game} ${text}`)).toEqual(
      expect.arrayContaining(['1 (', '2 hello']),
    );
    check(draft);
  });

  test.each(['', ' \n', 'a letter, not a game\n'])('%j holds no game', async (text) => {
    expect((await draftOf(text)).isEmpty).toBe(true);
  });

  test.each([
    ['UTF-8', Buffer.from('[White "Müller"]\r\n\r\n1. e4 {für} *\r\n')],
    ['UTF-8 with a mark', Buffer.from('\uFEFF[White "Müller"]\n\n1. e4 {für} *\n')],
    ['ISO 8859-1', Buffer.from('[White "Müller"]\n\n1. e4 {für} *\n', 'latin1')],
    ['UTF-16', Buffer.from('\uFEFF[White "Müller"]\n\n1. e4 {für} *\n', 'utf16le')],
    ['UTF-16 without a mark', Buffer.from('[White "Müller"]\n\n1. e4 {für} *\n', 'utf16le')],
  ])('a file in %s', async (name, bytes) => {
    const file = path.join(work, `${name}.pgn`);
    writeFileSync(file, bytes);
    const draft = await makeDraft(readArchive(file), { by: 'game', side: 'both', title: 'x' });
    expect(notesOf(draft)).toEqual([]);
    const [game] = exportOf(draft);
    expect(game?.tags.find((tag) => tag.name === 'White')?.value).toBe('Müller');
    expect(outline(game?.line ?? { before: [], moves: [] })).toBe(' e4 {für}');
  });

  test('a pipe, which can be read only once', async () => {
    const file = path.join(work, 'pipe.pgn');
    execFileSync('mkfifo', [file]);
    const writer = spawn('sh', ['-c', `printf '[Event "x"]\\n\\n1. e4 *\\n' > "$0"`, file]);
    const draft = await makeDraft(readArchive(file), { by: 'game', side: 'both', title: 'x' });
    expect(draft.games).toBe(1);
    writer.kill();
  });

  test('each game of a file has its own encoding', async () => {
    const file = path.join(work, 'mixed.pgn');
    const game = '[Event "x"]\n[White "Müller"]\n\n1. e4 *\n\n';
    writeFileSync(file, Buffer.concat([Buffer.from(game), Buffer.from(game, 'latin1')]));
    const draft = await makeDraft(readArchive(file), { by: 'game', side: 'both', title: 'x' });
    const names = exportOf(draft).map(({ tags }) => tags.find(({ name }) => name === 'White'));
    expect(names.map((tag) => tag?.value)).toEqual(['Müller', 'Müller']);
  });

  test('a file is read game by game, and lines are counted through', async () => {
    const file = path.join(work, 'many.pgn');
    const game = '[Event "x"]\r\n\r\n1. e4 e5 2. Ke3 *\r\n\r\n';
    writeFileSync(file, game.repeat(20_000));
    let count = 0;
    for await (const part of readArchive(file)) {
      if (part.text !== game || part.line !== 4 * count + 1) expect(part).toBe(count);
      count++;
    }
    expect(count).toBe(20_000);
  });

  // One with more moves and comments, and one with more signs in a comment.
  test.each([
    ['tokens', '{} '.repeat(250_000)],
    ['signs', `{${'a'.repeat(5_000_000)}}`],
  ])('a game of too many %s is left out, and its neighbours stay', async (name, rest) => {
    const file = path.join(work, `${name}.pgn`);
    const small = '[White "A"]\n\n1. e4 e5 *\n\n';
    writeFileSync(file, `${small}[White "B"]\n\n1. d4\n${rest}\n*\n\n${small}1. Ke5 *\n`);
    const draft = await makeDraft(readArchive(file), { by: 'game', side: 'both', title: 'x' });
    expect(draft).toMatchObject({ games: 4, chapters: 3 });
    expect(notesOf(draft)).toMatchObject([
      { game: 2, line: 5, message: expect.stringContaining('longer than any game can be') },
      { game: 4, line: 15, message: expect.stringContaining('cannot be played') },
    ]);
  });

  test('more chapters than anybody goes through are refused before one is written', async () => {
    const games = '[White "A"]\n\n1. e4 *\n\n';
    await expect(draftOf(games.repeat(5001))).rejects.toThrow('more than 5,000 chapters');
    const branches = await draftOf(games.repeat(5001), 'branch');
    expect(branches).toMatchObject({ games: 5001, chapters: 1 });
  });

  test('what is no PGN has notes up to a number', async () => {
    const draft = await draftOf('1. e4 ( ) ( ) '.repeat(1000));
    expect(notesOf(draft)).toHaveLength(1002);
    const messages = draft.notes.map(({ message }) => message);
    expect(messages).toContain('1,000 more places of this game cannot be read.');
  });

  test('a comment with any number of brackets is read as it was', async () => {
    const words = '[%csl Rd4][%cal Gd4d5] (a) [b](c) '.repeat(200).trim();
    const [game] = exportOf(await draftOf(`1. e4 {${words}} e5 {[a](b) [c]} *`));
    expect(outline(game?.line ?? { before: [], moves: [] })).toBe(` e4 {${words}} e5 {[a](b) [c]}`);
  });
});
