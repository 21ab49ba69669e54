/**
 * The constructs of the PGN standard (1994-03-12) and of its supplement of 2001, one by one: what an import
 * keeps of each, and what it tells. chessops (GPL: for tests only) reads the same files beside it, and the
 * reader of `compare` the main lines.
 */
import { parsePgn } from 'chessops/pgn';
import { describe, expect, test } from 'vitest';
import { createArchiveReader, parseGames, readMainLine } from '../movetext/index.ts';
import { makeDraft } from './index.ts';
import { casesOfFiles } from './testing/cases-of-files.ts';
import { casesOfMoves } from './testing/cases-of-moves.ts';
import { casesOfTags } from './testing/cases-of-tags.ts';
import type { PgnCase } from './testing/pgn-case.ts';

const cases: readonly PgnCase[] = [...casesOfFiles, ...casesOfTags, ...casesOfMoves];

const bytesOf = ({ pgn }: PgnCase) =>
  typeof pgn === 'string' ? new TextEncoder().encode(pgn) : Uint8Array.from(pgn);

function* gamesOf(bytes: Uint8Array) {
  const reader = createArchiveReader();
  yield* [...reader.push(bytes)];
  yield* reader.end();
}

async function draftOf(bytes: Uint8Array) {
  const parts = (async function* parts() {
    yield* gamesOf(bytes);
  })();
  const draft = await makeDraft(parts, { by: 'game', side: 'both', title: 'A draft' });
  const text = draft.files.map((file) => file.text).join('\n');
  const blocks = [...text.matchAll(/^```moves\n([\s\S]*?)^```$/gm)].map(([, block = '']) => block);
  return { ...draft, text, blocks };
}

/** The moves of a block without its tags, on one line. */
const movesOf = (block: string) =>
  block
    .replace(/^\[.*"\]\n/gm, '')
    .replace(/\s+/g, ' ')
    .trim();

const sansOf = (block: string) =>
  parseGames(block)[0]?.line.moves.map(({ san }) => san.text.replace(/[+#]$/, '')) ?? [];

describe('a case of the standard', () => {
  test.each(cases)('$number $what', async (each) => {
    const { blocks, notes, text } = await draftOf(bytesOf(each));
    expect(blocks.map(movesOf)).toEqual(each.blocks);
    const messages = notes.map(({ message }) => message);
    expect(messages).toEqual((each.told ?? []).map((piece) => expect.stringContaining(piece)));
    for (const piece of each.quoted ?? []) {
      expect(notes.map((note) => note.text)).toContainEqual(expect.stringContaining(piece));
    }
    for (const piece of each.words ?? []) expect(text).toContain(piece);
    const tags = parseGames(blocks[0] ?? '')[0]?.tags ?? [];
    for (const [name, value] of Object.entries(each.tags ?? {})) {
      expect(tags).toContainEqual(expect.objectContaining({ name, value }));
    }
  });

  test('all 114 are there', () => {
    const numbers = new Set(cases.map(({ number }) => number));
    expect([...numbers].sort((a, b) => a - b)).toEqual(
      Array.from({ length: 114 }, (_, at) => at + 1),
    );
  });
});

describe('another reader', () => {
  test.each(cases.filter(({ alone }) => alone === undefined))(
    'chessops reads the same main lines: $number $what',
    (each) => {
      const { pgn } = each;
      const text = typeof pgn === 'string' ? pgn : Buffer.from(pgn).toString('latin1');
      const read = parsePgn(text).map((game) =>
        [...game.moves.mainline()].map(({ san }) => san.replace(/[+#]$/, '')),
      );
      const ours = each.blocks.map((block) => sansOf(block));
      expect(
        read
          .filter((line) => line.length > 0)
          .slice(0, ours.length)
          .map(plainly),
      ).toEqual(ours.map(plainly));
    },
  );

  test.each(cases)('compare meets the same main lines: $number $what', (each) => {
    const games = [...gamesOf(bytesOf(each))].map(({ text }) => {
      const line = readMainLine(text);
      const moves: string[] = [];
      let step = line.next();
      for (; typeof step === 'string'; step = line.next()) moves.push(step);
      return { moves: plainly(moves), stopped: step !== undefined };
    });
    for (const [at, block] of each.blocks.entries()) {
      const { moves = [], stopped = false } = games[at] ?? {};
      const ours = plainly(sansOf(block));
      // It stops at what it cannot read, and says so.
      expect(stopped ? moves : moves.slice(0, ours.length)).toEqual(
        stopped ? ours.slice(0, moves.length) : ours,
      );
    }
  });
});

/** Without what the standard lets an import mend (8.2.3.7), and needless telling apart. */
const plainly = (moves: readonly string[]) =>
  moves.map((san) =>
    san
      .replace(/[+#x=!?]/g, '')
      .replace(/^0-0/, 'O-O')
      .replace('♘', 'N')
      .replace(/^P/, '')
      .replace(/^n/, 'N')
      .replace(/^([QN])[a-h]?[1-8]?([a-h][1-8])$/, '$1$2'),
  );

describe('beside the list', () => {
  const text =
    '[White "Übung"]\r\n\r\n1. e4 a6 2. e5 d5 3. exd6 e.p. {[%clk 1:05:23] größer} *\r\n';
  const utf16 = Buffer.from(text, 'utf16le');
  test.each([
    ['UTF-8', Buffer.from(text)],
    ['UTF-8 with a byte order mark', Buffer.from(`\uFEFF${text}`)],
    ['UTF-16 with a mark', Buffer.concat([Buffer.from([0xff, 0xfe]), utf16])],
    ['UTF-16 without one', utf16],
    ['UTF-16, the other byte first', Buffer.from(`\uFEFF${text}`, 'utf16le').swap16()],
  ])('%s, and `e.p.` behind the capture', async (_, bytes) => {
    const { blocks, notes } = await draftOf(bytes);
    expect(notes).toEqual([]);
    expect(blocks[0]).toContain('[White "Übung"]');
    expect(blocks.map(movesOf)).toEqual(['1. e4 a6 2. e5 d5 3. exd6 {[%clk 1:05:23] größer} *']);
  });

  test('another variant of chess stays as text, and is named', async () => {
    const pgn = '[Variant "Atomic"]\n\n1. e4 e5 *\n';
    const { blocks, notes, text: all } = await draftOf(Buffer.from(pgn));
    expect(blocks).toEqual([]);
    expect(notes.map(({ message }) => message)).toEqual([expect.stringContaining('`Atomic`')]);
    expect(all).toContain('1. e4 e5');
    expect((await draftOf(Buffer.from(pgn.replace('Atomic', 'Standard')))).notes).toEqual([]);
  });

  test('clocks and times are left out where one likes', async () => {
    const parts = (async function* parts() {
      const pgn = '1. e4 {[%clk 1:05:23]} e5 {good [%emt 0:00:07][%zzz 1]} *';
      yield { text: pgn, line: 1, tooLong: false };
    })();
    const options = { by: 'game', side: 'both', title: 'x', withoutClocks: true } as const;
    const { files } = await makeDraft(parts, options);
    expect(files.at(-1)?.text).toContain('1. e4 e5 {good [%zzz 1]} *');
  });
});
