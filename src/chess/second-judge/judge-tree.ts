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
    while (path.length > 0 && path.at(-1) !== parent) {
      path.pop();
      chess.undo();
    }
    const fen = chess.fen();
    const verdict = judgeMove(chess, san, key);
    if (verdict !== undefined) return { fen, san, verdict };
    path.push(index);
  }
  return undefined;
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
