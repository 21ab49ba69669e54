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
  for (const index of depthFirst(moves)) {
    const { parent, san, key } = moves[index] as PlayedTree['moves'][number];
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

/** Each move behind the one before it, a line to its end: in a text a variation stands amid its line. */
function* depthFirst(moves: PlayedTree['moves']): Generator<number> {
  const children = new Map<number, number[]>();
  for (const [index, { parent }] of moves.entries()) {
    const others = children.get(parent);
    if (others === undefined) children.set(parent, [index]);
    else others.push(index);
  }
  const open = [...(children.get(-1) ?? [])].reverse();
  for (let next = open.pop(); next !== undefined; next = open.pop()) {
    yield next;
    open.push(...(children.get(next) ?? []).reverse());
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
