/**
 * Static exchange: the sides take in turn on one square, each with its least valuable piece that
 * legally can, and each may stop when going on would cost it. Common practice, no source. Of
 * several pieces of one kind the one that serves its side best takes.
 */

import { type CoreMove, type DescribedMove, GameBoard } from '../core/game-board.ts';
import { type Position, pieceKinds, type Square } from '../types.ts';
import { pieceValues } from '../values.ts';

/** A capture and what it nets in pawns, a promotion counted as the difference it makes. */
export interface Exchange extends DescribedMove {
  readonly gain: number;
}

/** Least valuable first; a king takes last, since it can only end an exchange. */
const order = [...pieceKinds].reverse();

/** What a legal move of the side to move nets; absent if no legal move goes so. */
export function exchangeOf(
  position: Position,
  move: Pick<DescribedMove, 'from' | 'to' | 'promotion'>,
): Exchange | undefined {
  const board = new GameBoard(position);
  for (const each of board.moves()) {
    const described = board.describe(each);
    const { from, to, promotion } = described;
    if (from !== move.from || to !== move.to || promotion !== move.promotion) continue;
    const gain = gainOf(board, each);
    if (gain !== undefined) return { ...described, gain };
  }
  return undefined;
}

/** The best legal capture of what stands on a square, by the side to move; absent if there is none. */
export function bestCapture(position: Position, square: Square): Exchange | undefined {
  const board = new GameBoard(position);
  let best: Exchange | undefined;
  for (const move of board.moves()) {
    const described = board.describe(move);
    if (described.taken?.square !== square) continue;
    const gain = gainOf(board, move);
    if (gain !== undefined && (best === undefined || gain > best.gain)) {
      best = { ...described, gain };
    }
  }
  return best;
}

/**
 * The captures and promotions by which the side to move wins at least so much, in pawns: the greatest gain first,
 * and of equal ones what takes with the least.
 */
export function gainfulCaptures(position: Position, least = 1): Exchange[] {
  const board = new GameBoard(position);
  const found: Exchange[] = [];
  for (const move of board.moves()) {
    // Nothing nets more than it wins at once.
    if (board.worth(move) < least) continue;
    const gain = gainOf(board, move);
    if (gain !== undefined && gain >= least) found.push({ ...board.describe(move), gain });
  }
  return found.sort(
    (one, other) => other.gain - one.gain || order.indexOf(one.kind) - order.indexOf(other.kind),
  );
}

/** What a move nets against the best answer on its square; absent if it is not legal. */
function gainOf(board: GameBoard, move: CoreMove): number | undefined {
  const { to, taken, promotion } = board.describe(move);
  if (!board.make(move)) return undefined;
  const answer = bestAnswer(board, to);
  board.unmake();
  const won = taken ? pieceValues[taken.kind] : 0;
  const promoted = promotion ? pieceValues[promotion] - pieceValues.pawn : 0;
  return won + promoted - answer;
}

function bestAnswer(board: GameBoard, square: Square): number {
  const captures = board
    .moves()
    .map((move) => ({ move, described: board.describe(move) }))
    .filter(({ described }) => described.taken?.square === square);
  for (const kind of order) {
    const gains = captures
      .filter(({ described }) => described.kind === kind)
      .flatMap(({ move }) => gainOf(board, move) ?? []);
    if (gains.length > 0) return Math.max(0, ...gains);
  }
  return 0;
}
