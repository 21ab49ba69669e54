import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { runs } from '../../../tests/setup/runs.ts';
import { parseGames } from '../parse/parse-games.ts';
import { readMainLine } from '../parse/read-main-line.ts';
import { outline } from '../testing/outline.ts';
import { GameSplitter } from './split-games.ts';

/** The games of a file that comes in chunks of the given sizes, and then the rest. */
function split(text: string, sizes: readonly number[] = []): string[] {
  const bytes = new TextEncoder().encode(text);
  const splitter = new GameSplitter();
  const games: string[] = [];
  const take = (found: ReturnType<typeof splitter.push>) =>
    games.push(
      ...found.map((game) => new TextDecoder('utf-8', { ignoreBOM: true }).decode(game.bytes)),
    );
  let at = 0;
  for (const size of sizes) {
    take(splitter.push(bytes.subarray(at, at + size)));
    at += size;
  }
  take(splitter.push(bytes.subarray(at)));
  take(splitter.end());
  return games;
}

describe('a file is cut into its games', () => {
  test.each([
    ['with blank lines', '[Event "a"]\n\n1. e4 *\n\n[Event "b"]\n\n1. d4 *\n', 2],
    ['without blank lines', '[A "1"]\n1. e4 *\n[A "2"]\n1. d4 *\n[A "3"]\n1. c4 *', 3],
    ['without tags', '1. e4 e5 1-0\n1. d4 d5\n2. c4 1/2-1/2\n\n1.c4 *', 3],
    ['without moves', '[A "1"]\n\n[A "2"]\n\n1. d4 *\n\n[A "3"]\n\n', 3],
    ['with lines that end in CR', '[A "1"]\r\r1. e4 *\r\r[A "2"]\r\r1. d4 *\r', 2],
    ['with lines that end in CR LF', '[A "1"]\r\n\r\n1. e4 *\r\n\r\n[A "2"]\r\n\r\n1. d4 *\r\n', 2],
    ['with tags in comments', '1. e4 {a\n[%clk "1"]\n[B "x"]\n} e5 *\n\n[A "2"]\n\n1. d4 *', 2],
    ['with a comment left open', '[A "1"]\n\n1. e4 {a\n[B "x"]\n\n[A "2"]\n\n1. d4 *', 2],
    ['with a variation left open', '[A "1"]\n1. e4 (1. d4\n[A "2"]\n\n1. d4 *', 2],
    ['with results in variations', '1. e4 (1. d4 1-0\n1. c4) e5 *', 1],
    ['with a line comment', '1. e4 ; {\n[A "2"]\n1. d4 *', 2],
    ['with an escaped line', '1. e4\n%{ 1-0\n1. d4 *', 1],
    ['with a mark before it', '\uFEFF[A "1"]\n1. e4 *', 1],
    ['of nothing but space', '\uFEFF \r\n\n', 0],
  ])('%s', (_, text, count) => {
    expect(split(text).length).toBe(count);
    expect(split(text).join('')).toBe(count === 0 ? '' : text);
  });

  const line = fc.constantFrom(
    '[Event "a"]',
    '[White "b {"] [Black "c"]',
    '  [Site "x\\""]',
    '[Result "*"] 1. e4 e5',
    '1. e4 e5 2. Nf3 1-0',
    '1... c5 (1... e5',
    '2. Nf3 Nc6) 2. d4 1/2-1/2',
    '1.d4 {left',
    '} d5 *',
    '{whole} {two}',
    '1-0 2. c4',
    '; line [',
    '%[Event "no"]',
    '',
    '',
    ' \t',
    'Größe ½-½',
  );
  const file = fc
    .record({
      lines: fc.array(line, { maxLength: 30 }),
      end: fc.constantFrom('\n', '\r\n', '\r'),
    })
    .map(({ lines, end }) => lines.join(end));

  test('the same, in whatever pieces it comes', () => {
    fc.assert(
      fc.property(file, fc.array(fc.nat(40), { maxLength: 40 }), (text, sizes) => {
        expect(split(text, sizes)).toEqual(split(text));
      }),
      { numRuns: runs(500) },
    );
  });

  test('so that parseGames reads each as it is by itself, at its place', () => {
    fc.assert(
      fc.property(file, (text) => {
        const games = parseGames(text);
        const pieces = split(text).flatMap((piece) =>
          parseGames(piece).map((game) => ({ piece, game })),
        );
        expect(games.length).toBe(pieces.length);
        for (const [index, { line, tags, problems }] of games.entries()) {
          const { piece, game } = pieces[index] ?? {};
          const at =
            (tags[0]?.span.start ?? line.span.start) -
            (game?.tags[0]?.span.start ?? game?.line.span.start ?? 0);
          expect(text.slice(at, at + (piece?.length ?? 0))).toBe(piece);
          expect(outline(line)).toBe(game && outline(game.line));
          expect(problems.map(({ kind, span }) => [kind, span.start - at])).toEqual(
            game?.problems.map(({ kind, span }) => [kind, span.start]),
          );
        }
      }),
      { numRuns: runs(500) },
    );
  });

  test('so that the main line of each is that of its tree, where nothing is wrong with it', () => {
    fc.assert(
      fc.property(file, (text) => {
        for (const piece of split(text)) {
          const [game] = parseGames(piece);
          if (game === undefined || game.problems.length > 0) continue;
          const { next } = readMainLine(piece);
          const moves: string[] = [];
          for (let step = next(); step !== undefined; step = next())
            moves.push(typeof step === 'string' ? step : step.text);
          expect(moves).toEqual(game.line.moves.map(({ san }) => san.text));
        }
      }),
      { numRuns: runs(500) },
    );
  });

  test('what is longer than any game is cut short, and the next game is found', () => {
    const endless = `[A "1"]\n1. e4 {${'x'.repeat(300_000)}} *\n\n[A "2"]\n1. d4 *\n`;
    const bytes = new TextEncoder().encode(endless);
    const splitter = new GameSplitter(100_000);
    const found: { tooLong: boolean; size: number }[] = [];
    const take = (games: ReturnType<typeof splitter.push>) =>
      found.push(...games.map(({ tooLong, bytes }) => ({ tooLong, size: bytes.length })));
    for (let at = 0; at < bytes.length; at += 10_000) {
      take(splitter.push(bytes.subarray(at, at + 10_000)));
    }
    take(splitter.end());
    expect(found).toEqual([
      { tooLong: true, size: 16_384 },
      { tooLong: false, size: '[A "2"]\n1. d4 *\n'.length },
    ]);
  });
});
