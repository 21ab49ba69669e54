import { mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { Chess } from 'chess.js';

/** A line in SAN from a position; an empty FEN is the initial one. */
export interface MadeLine {
  readonly fen: string;
  readonly moves: readonly string[];
}

export interface MadeCourse {
  readonly folder: string;
  /** For the bare replay: each move of the course once. */
  readonly lines: readonly MadeLine[];
  readonly moves: number;
}

export interface CourseSize {
  readonly chapters: number;
  readonly movesPerChapter: number;
  readonly wordsPerChapter: number;
  /** Of another one the moves and words are others; 1 unless said. */
  readonly seed?: number;
  /** `made` unless said. */
  readonly id?: string;
}

/** A generator of numbers in [0, 1): mulberry32, public domain; the same course every time. */
function createRandom(seed: number): () => number {
  let state = seed;
  return () => {
    state = (state + 0x6d2b79f5) | 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
}

/**
 * Writes a course of random legal moves: in each chapter one main line of half the moves, and
 * variations of five moves with a comment each for the rest. Few positions recur, so a cache of
 * played moves gains little.
 */
export async function makeCourse(folder: string, size: CourseSize): Promise<MadeCourse> {
  const { seed = 1, id = 'made' } = size;
  const random = createRandom(seed);
  const lines: MadeLine[] = [];
  let count = 0;
  await mkdir(path.join(folder, 'chapters'), { recursive: true });
  await writeFile(
    path.join(folder, 'course.yaml'), // Random lines meet untold now and then: a warning costs the same work and stops nothing.
    `title: A made course\nid: ${id}\nside: both\nrules:\n  transposition-untold: warning\n`,
  );
  for (let chapter = 0; chapter < size.chapters; chapter++) {
    const main = playRandom([], Math.ceil(size.movesPerChapter / 2), random);
    lines.push({ fen: '', moves: main });
    const branches = new Map<number, string[]>();
    let rest = size.movesPerChapter - main.length;
    for (let at = 3; rest > 0 && at < main.length - 1; at += 4) {
      const start = main.slice(0, at);
      const moves = playRandom(start, Math.min(5, rest), random);
      if (moves[0] === main[at]) continue;
      branches.set(at, moves);
      lines.push({ fen: fenAfter(start), moves });
      rest -= moves.length;
    }
    count += size.movesPerChapter - rest;
    const text = [
      `---\ntitle: Chapter ${chapter + 1}\n---\n`,
      words(size.wordsPerChapter / 2, random),
      `\n\n\`\`\`moves\n${movetext(main, branches)}\n\`\`\`\n\n`,
      words(size.wordsPerChapter / 2, random),
      '\n',
    ].join('');
    const name = `${String(chapter + 1).padStart(4, '0')}-chapter-${chapter + 1}.md`;
    await writeFile(path.join(folder, 'chapters', name), text);
  }
  return { folder, lines, moves: count };
}

function fenAfter(moves: readonly string[]): string {
  const chess = new Chess();
  for (const move of moves) chess.move(move);
  return chess.fen();
}

function playRandom(start: readonly string[], length: number, random: () => number): string[] {
  const chess = new Chess();
  for (const move of start) chess.move(move);
  const moves: string[] = [];
  while (moves.length < length) {
    const legal = chess.moves();
    const move = legal[Math.floor(random() * legal.length)];
    if (move === undefined) break;
    chess.move(move);
    moves.push(move);
  }
  return moves;
}

function movetext(main: readonly string[], branches: ReadonlyMap<number, readonly string[]>) {
  let text = '';
  for (const [at, move] of main.entries()) {
    text += `${number(at)} ${move} `;
    const branch = branches.get(at);
    if (!branch) continue;
    const inner = branch.map((san, index) =>
      index === 0 || (at + index) % 2 === 0 ? `${number(at + index)} ${san}` : san,
    );
    text += `{A thought about *this* move.}\n  ( ${inner.join(' ')} {and why} )\n`;
  }
  return text.trim();
}

function number(ply: number): string {
  return ply % 2 === 0 ? `${ply / 2 + 1}.` : `${(ply + 1) / 2}...`;
}

const vocabulary =
  'the pawn on the dark square waits for a knight which wants to *reach* its outpost before White can trade and then `Nf3` comes with tempo while our rook takes the open file because plans matter more than moves'.split(
    ' ',
  );

function words(count: number, random: () => number): string {
  const paragraphs = [];
  for (let left = count; left > 0; left -= 75) {
    const length = Math.min(75, Math.ceil(left));
    const list = Array.from(
      { length },
      () => vocabulary[Math.floor(random() * vocabulary.length)] ?? 'the',
    );
    paragraphs.push(`${list.join(' ')}.`);
  }
  return paragraphs.join('\n\n');
}
