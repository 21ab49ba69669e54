/** chess.js as a second judge of what the core has played: the only file that imports it. */
import { Chess } from 'chess.js';
import type { PlayedTree } from '../types.ts';

/** Where the two sets of rules differ. */
export interface Disagreement {
  /** The position in which the move was played. */
  readonly fen: string;
  readonly san: string;
  /** What chess.js says, as a clause: `is no legal move`, `is Nbd2`, `leads to …`. */
  readonly verdict: string;
}

/** Replays a tree and returns the first difference: of legality, of spelling, of the position reached. */
export function judgeTree({ start, moves }: PlayedTree): Disagreement | undefined {
  const chess = new Chess(start, { skipValidation: true });
  const path: number[] = [];
  for (const [index, { parent, san, key }] of moves.entries()) {
    if ((path.at(-1) ?? -1) !== parent) go(chess, path, wayTo(moves, parent), moves);
    const fen = chess.fen();
    const verdict = judgeMove(chess, san, key);
    if (verdict !== undefined) return { fen, san, verdict };
    path.push(index);
  }
  return undefined;
}

/** The indices of the moves that lead to one, itself among them. */
function wayTo(moves: PlayedTree['moves'], index: number): number[] {
  const way: number[] = [];
  for (let at = index; at >= 0; at = moves[at]?.parent ?? -1) way.unshift(at);
  return way;
}

/** Goes back from one line and on into another, which was judged before: a variation stands amid it. */
function go(
  chess: Chess,
  path: number[],
  way: readonly number[],
  moves: PlayedTree['moves'],
): void {
  while (path.length > 0 && path.at(-1) !== way[path.length - 1]) {
    path.pop();
    chess.undo();
  }
  for (const step of way.slice(path.length)) {
    chess.move(moves[step]?.san ?? '', { strict: true });
    path.push(step);
  }
}

function judgeMove(chess: Chess, san: string, key: string): string | undefined {
  let made: ReturnType<Chess['move']>;
  try {
    made = chess.move(san, { strict: true });
  } catch {
    return 'is no legal move';
  }
  if (made.san !== san) return `is ${made.san}`;
  return made.after.startsWith(`${key} `) ? undefined : `leads to ${made.after}`;
}
