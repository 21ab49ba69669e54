import {
  bestCapture,
  type Color,
  findMate,
  inCheck,
  isMate,
  otherColor,
  type Position,
  passMove,
  pieceKinds,
  pieceValues,
  readBoard,
  sideToMove,
  squaresOf,
} from '../../chess/index.ts';
import type { MoveNode } from '../../model/index.ts';
import type { SearchBudget } from '../claims/index.ts';
import type { Goal } from './read-ask.ts';

/** What a goal is judged by: the positions of an answer, from the one that is asked about to its end. */
export interface Line {
  readonly start: Position;
  /** The moves of the main line, as far as they can be played. */
  readonly moves: readonly MoveNode[];
}

/** Positions that a search for one mate may look at: a few tenths of a second. */
const searchBudget = 500_000;
/** A mate that nobody counted is looked for up to so many moves. */
const longest = 3;

/**
 * Why an answer does not do what is asked, in one English clause; nothing where it does, or where that cannot be
 * said for sure.
 */
export function fallsShort(goal: Goal, line: Line, search: SearchBudget): string | undefined {
  const color = sideToMove(line.start);
  switch (goal.kind) {
    case 'mate':
      return missesMate(goal.moves, line, color, search);
    case 'check':
      return missesCheck(line, color);
    case 'win':
      return missesWin(goal.pawns, line, color);
  }
}

function missesMate(
  moves: number | undefined,
  { moves: line }: Line,
  color: Color,
  search: SearchBudget,
): string | undefined {
  const [first] = line;
  if (!first?.position) return undefined;
  const mates = line.findIndex(({ position }) => position && isMate(position));
  const own = Math.ceil((mates + 1) / 2);
  if (moves === undefined && mates >= 0) return undefined;
  if (isMate(first.position)) return undefined;
  const left = (moves ?? longest + 1) - 1;
  if (left === 0) return 'it does not mate';
  if (search.left <= 0) return undefined;
  const found = findMate(first.position, color, left, searchBudget, search);
  if (found.result !== 'none') return undefined;
  if (moves === undefined) return 'its line does not end in mate';
  return mates >= 0
    ? `its line mates with move ${own}, and no mate in ${moves} can be forced with it`
    : `no mate in ${moves} can be forced with it`;
}

function missesCheck({ moves }: Line, color: Color): string | undefined {
  if (moves.length === 0) return undefined;
  const gives = moves.some(({ move, position }) => {
    return move?.color === color && position && inCheck(position);
  });
  return gives ? undefined : 'it gives no check';
}

/**
 * An answer that is only begun may win later, so three half-moves at least must be shown; and what is won by the
 * best capture, were it the student's turn again, counts as won.
 */
function missesWin(pawns: number, { start, moves }: Line, color: Color): string | undefined {
  const end = moves.at(-1)?.position;
  if (moves.length < 3 || !end || isMate(end)) return undefined;
  const shown = balance(end, color) - balance(start, color);
  const turn = sideToMove(end) === color;
  if (!turn && inCheck(end)) return undefined;
  const next = turn ? end : passMove(end);
  const hanging = squaresOf(readBoard(next), otherColor(color)).map(
    (square) => bestCapture(next, square)?.gain ?? 0,
  );
  if (shown + Math.max(0, ...hanging) >= pawns || mayPromote(end, color)) return undefined;
  if (shown === 0) return 'its line ends with the material as it was';
  const much = `${Math.abs(shown)} ${Math.abs(shown) === 1 ? 'pawn' : 'pawns'}`;
  return shown > 0 ? `its line wins ${much} in all` : `its line loses ${much} in all`;
}

function mayPromote(position: Position, color: Color): boolean {
  const rank = color === 'white' ? '7' : '2';
  return squaresOf(readBoard(position), color, 'pawn').some((square) => square.endsWith(rank));
}

function balance(position: Position, color: Color): number {
  const board = readBoard(position);
  const sum = (of: Color) =>
    pieceKinds.reduce(
      (total, kind) => total + pieceValues[kind] * squaresOf(board, of, kind).length,
      0,
    );
  return sum(color) - sum(otherColor(color));
}
