/** PGN as other people's programs read it: two libraries, and Debian's pgn-extract. */
import { spawnSync } from 'node:child_process';
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { parseGames as parseTheirGames } from '@mliebelt/pgn-parser';
import { Chess } from 'chess.js';
import { makeFen } from 'chessops/fen';
import { type Node, type PgnNodeData, parsePgn, startingPosition } from 'chessops/pgn';
import { parseSan } from 'chessops/san';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import type { MoveNode } from '../../src/model/index.ts';
import { makePgn, toLatin1 } from '../../src/publish/pgn/index.ts';
import { writeMixedCourse } from './mixed-course.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-export-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

async function load(folder: string) {
  const { checked, diagnostics } = await loadCourse(folder);
  if (checked === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  return checked;
}

const mixed = path.join(work, 'mixed');
beforeAll(() => writeMixedCourse(mixed));

/** FEN after each move of a block of moves or a game, sorted. */
function positionsOf(nodes: readonly MoveNode[]): string[] {
  return nodes.flatMap(({ move, position }) => (move && position ? [position.fen] : [])).sort();
}

/** The same of a game that chessops has read and plays itself. */
function theirPositions(game: ReturnType<typeof parsePgn>[number]): string[] {
  const found: string[] = [];
  const start = startingPosition(game.headers).unwrap();
  const walk = (node: Node<PgnNodeData>, position: typeof start): void => {
    for (const child of node.children) {
      const move = parseSan(position, child.data.san);
      if (move === undefined) throw new Error(`${child.data.san} is not legal there`);
      const after = position.clone();
      after.play(move);
      found.push(makeFen(after.toSetup()));
      walk(child, after);
    }
  };
  walk(game.moves, start);
  return found.sort();
}

/** A line as moves, each with the variations on it. */
type Line = readonly (readonly [san: string, variations: readonly Line[]])[];

function lineOf(moves: ReturnType<typeof parseTheirGames>[number]['moves']): Line {
  return moves.map(({ notation, variations }) => [notation.notation, variations.map(lineOf)]);
}

function lineFrom(node: Node<PgnNodeData>): Line {
  const [next, ...others] = node.children;
  if (next === undefined) return [];
  const variations = others.map((other): Line => [[other.data.san, []], ...lineFrom(other)]);
  return [[next.data.san, variations], ...lineFrom(next)];
}

describe.each(['demo-course', 'content/handbook', mixed])('%s', (folder) => {
  // The strictest reader known: one comment in a place, in braces, and none behind a variation.
  test('chess.js takes every game', async () => {
    for (const game of makePgn(await load(folder)).split(/\n\n(?=\[Event )/)) {
      expect(() => new Chess().loadPgn(game), game).not.toThrow();
    }
  });

  test('no two games look alike in a list', async () => {
    const games = parsePgn(makePgn(await load(folder)));
    const listed = games.map(({ headers }) => `${headers.get('White')} - ${headers.get('Black')}`);
    expect(new Set(listed).size).toBe(listed.length);
  });

  test('chessops plays every move and variation to the same positions', async () => {
    const checked = await load(folder);
    const games = parsePgn(makePgn(checked));
    const blocks = checked.course.chapters.flatMap(({ blocks }) =>
      blocks.filter(({ kind }) => kind === 'moves' || kind === 'game' || kind === 'exercise'),
    );
    const withBlocks = games.filter((game) => game.moves.children.length > 0);
    expect(withBlocks.length).toBe(blocks.length);
    for (const [index, block] of blocks.entries()) {
      const game = withBlocks[index];
      if (game === undefined || block.kind === 'exercise') continue;
      if (block.kind === 'moves' || block.kind === 'game') {
        expect(theirPositions(game)).toEqual(positionsOf(block.nodes));
      }
    }
  });

  test('@mliebelt/pgn-parser reads the same moves and variations as chessops, and the tags', async () => {
    const text = makePgn(await load(folder));
    const games = parseTheirGames(text);
    expect(games.map(({ moves }) => lineOf(moves))).toEqual(
      parsePgn(text).map(({ moves }) => lineFrom(moves)),
    );
    expect(games.every(({ tags }) => tags?.Event !== undefined && tags.Result !== undefined)).toBe(
      true,
    );
  });

  // PGN standard, 8.1.1 and 8.2.1.
  test('tags stand in order, and lines of moves have fewer than 80 columns', async () => {
    for (const game of makePgn(await load(folder)).split(/\n\n(?=\[Event )/)) {
      const names = [...game.matchAll(/^\[(\w+) "/gm)].map((match) => match[1]);
      const roster = ['Event', 'Site', 'Date', 'Round', 'White', 'Black', 'Result'];
      expect(names.slice(0, 7)).toEqual(roster);
      expect(names.slice(7)).toEqual(names.slice(7).toSorted());
      const lines = game.split('\n').filter((line) => !line.startsWith('['));
      expect(lines.filter((line) => [...line].length >= 80)).toEqual([]);
    }
  });

  // Its exit code is 0 even for illegal moves: what it says tells.
  const tool = '/usr/games/pgn-extract';
  const known = spawnSync('pgn-extract', ['--version']).error === undefined;
  const program = known ? 'pgn-extract' : tool;
  const missing = !known && spawnSync(tool, ['--version']).error !== undefined;
  test.skipIf(missing)('pgn-extract finds every game sound', async () => {
    const file = path.join(work, 'course.pgn');
    const text = makePgn(await load(folder));
    writeFileSync(file, text);
    const { stderr } = spawnSync(program, ['-r', file], { encoding: 'utf8' });
    const count = parsePgn(text).length;
    expect(stderr).not.toMatch(/error|illegal|unknown|failed/i);
    expect(stderr).toMatch(new RegExp(`\\b${count} games?\\b`));
  });
});

test('one chapter has its own games, and an unknown one is told', async () => {
  const checked = await load('demo-course');
  const one = parsePgn(makePgn(checked, { chapter: 'move-orders' }));
  expect(one.length).toBeGreaterThan(0);
  expect(one.length).toBeLessThan(parsePgn(makePgn(checked)).length);
  expect(new Set(one.map(({ headers }) => headers.get('Chapter'))).size).toBe(1);
  expect(() => makePgn(checked, { chapter: 'move-order' })).toThrow('no chapter `move-order`');
});

// PGN standard, 4.3 (lines), 8.1.1.7 (results), 10 (NAGs).
test('long words, braces, a wrong move and a result that is none', async () => {
  const folder = path.join(work, 'strict');
  mkdirSync(path.join(folder, 'chapters'), { recursive: true });
  writeFileSync(path.join(folder, 'course.yaml'), 'title: T\nid: t\nside: white\n');
  writeFileSync(
    path.join(folder, 'chapters', '1.md'),
    [
      '---\ntitle: One\n---\n',
      `${'a'.repeat(600)} and {so}\n`,
      `\`\`\`game\n[White "A"]\n[Site "${'xy '.repeat(150)}"]\n[Result "-"]\n\n1. e4 e5\n\`\`\`\n`,
      '```exercise after="1. e4 e5 2. Nf3" before="2... Nc6"\nask: Develop.\nanswer: 3. Bb5\nhint: [One., Two.]\n```\n',
      '```exercise after=""\nask: Which move?\nanswer: e4\nwrong: f3 {It opens a diagonal.}\n```\n',
    ].join('\n'),
  );
  const text = makePgn(await load(folder));
  for (const line of text.split('\n')) expect(line.length).toBeLessThanOrEqual(255);
  const [game, after, exercise] = parsePgn(text);
  expect(game?.headers.get('Result')).toBe('*');
  expect(game?.headers.get('Black')).toBe('?');
  expect(game?.comments?.join(' ')).toContain('and (so)');
  // The move before the question comes first, and the question behind it.
  const [first] = after?.moves.children ?? [];
  expect(first?.data.san).toBe('Nc6');
  expect(first?.data.comments?.join(' ')).toContain('Develop. Hint 1 of 2: One. Hint 2 of 2: Two.');
  expect(first?.children.map(({ data }) => data.san)).toEqual(['Bb5']);
  expect(exercise?.moves.children.map(({ data }) => [data.san, data.nags ?? []])).toEqual([
    ['e4', []],
    ['f3', [2]],
  ]);
});

// PGN standard, 4.1.
test('ISO 8859-1 has the signs of print in its own, and counts what is lost', () => {
  const { bytes, lost } = toLatin1('“Zürich” – 5…Nf6 → Čáp 第');
  expect(Buffer.from(bytes).toString('latin1')).toBe('"Zürich" - 5...Nf6 -> Cáp ?');
  expect(lost).toBe(1);
});
