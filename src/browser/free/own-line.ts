import type { PlayedMove, Position } from '../../chess/types.ts';

/** Moves of the reader's own, from a position of the text. */
export interface OwnLine {
  readonly start: Position;
  readonly moves: readonly PlayedMove[];
  /** Number of them on the board; the others can be played again. */
  readonly at: number;
}

export function ownLineFrom(start: Position): OwnLine {
  return { start, moves: [], at: 0 };
}

export function positionIn({ start, moves, at }: OwnLine): Position {
  return moves[at - 1]?.after ?? start;
}

/** What led there; absent at the start. */
export function lastMoveIn({ moves, at }: OwnLine): PlayedMove | undefined {
  return moves[at - 1];
}

/** Plays a move: the next one again, or another in its place, which drops what came after. */
export function playIn(line: OwnLine, move: PlayedMove): OwnLine {
  const { moves, at } = line;
  if (moves[at]?.after.key === move.after.key) return { ...line, at: at + 1 };
  return { ...line, moves: [...moves.slice(0, at), move], at: at + 1 };
}

/** Goes to a number of moves, or to the end. */
export function goTo(line: OwnLine, at: number): OwnLine {
  return { ...line, at: Math.max(0, Math.min(line.moves.length, at)) };
}
