/** Why a pawn cannot go where the move says: FIDE Laws, 3.7. */
import { type Board, otherColor, squaresOf } from '../board.ts';
import { nameOf, sideName } from '../names.ts';
import type { PieceSpelling } from '../spelling.ts';
import { fileOf, rankOf, relativeRank, step } from '../squares.ts';
import type { Color, Square } from '../types.ts';
import { unsafeReason } from './safety.ts';

/** The squares that a pawn may go to, not counting the safety of its king. */
export function pawnReach(board: Board, from: Square, enPassant: string): Square[] {
  const color = board.get(from)?.color ?? 'white';
  const forward = forwardOf(color);
  const found: Square[] = [];
  const one = step(from, 0, forward);
  const two = step(from, 0, 2 * forward);
  if (one !== undefined && !board.has(one)) {
    found.push(one);
    if (two !== undefined && relativeRank(from, color) === 2 && !board.has(two)) found.push(two);
  }
  for (const side of [-1, 1]) {
    const to = step(from, side, forward);
    const taken = to === undefined ? undefined : board.get(to);
    if (to === undefined) continue;
    if (to === enPassant || (taken !== undefined && taken.color !== color)) found.push(to);
  }
  return found;
}

/**
 * @param clock the half-move clock: 0 where a pawn may just have moved
 * @param spelling a pawn's move that no pawn of the colour can make, to a square without an own piece
 */
export function pawnReason(
  board: Board,
  color: Color,
  clock: number,
  spelling: PieceSpelling,
): string {
  const { to, capture, file } = spelling;
  const sideways = file !== undefined && file !== to[0];
  return capture || sideways
    ? captureReason(board, color, clock, spelling)
    : advanceReason(board, color, spelling);
}

function captureReason(
  board: Board,
  color: Color,
  clock: number,
  { to, file, rank }: PieceSpelling,
): string {
  const back = -forwardOf(color);
  if (file === to[0]) return 'a pawn captures diagonally, not along its file';
  const beside = [-1, 1].flatMap((side) => step(to, side, back) ?? []);
  const origins = beside.filter((square) => file === undefined || square[0] === file);
  if (file !== undefined && Math.abs(fileOf(`${file}1`) - fileOf(to)) !== 1) {
    return `a pawn captures on the next file, and the ${file}-file is not next to ${to}`;
  }
  const ready = origins.filter(
    (square) => isPawn(board, square, color) && (rank === undefined || square[1] === rank),
  );
  if (ready.length === 0) {
    const where = origins.length === 0 ? `beside ${to}` : `on ${origins.join(' or ')}`;
    return `no ${color} pawn stands ${where} to capture on ${to}`;
  }
  const passed = step(to, 0, back);
  if (
    passed !== undefined &&
    relativeRank(to, color) === 6 &&
    isPawn(board, passed, otherColor(color))
  ) {
    // A position keeps the right only where the capture is legal: it may be the king that forbids it.
    const unsafe = ready.map((from) => unsafeReason(board, from, to));
    const [first] = unsafe;
    if (clock === 0 && first !== undefined && !unsafe.includes(undefined)) return first;
    return `${nameOf(board, passed)} may be taken en passant only at once after its double step`;
  }
  return `nothing stands on ${to} to capture`;
}

function advanceReason(board: Board, color: Color, { to, rank }: PieceSpelling): string {
  const forward = forwardOf(color);
  const file = to[0];
  const behind: Square[] = [];
  for (
    let square = step(to, 0, -forward);
    square !== undefined;
    square = step(square, 0, -forward)
  ) {
    behind.push(square);
  }
  const from = behind.find(
    (square) => isPawn(board, square, color) && (rank === undefined || square[1] === rank),
  );
  if (from === undefined) {
    const [standing] = squaresOf(board, color, 'pawn').filter(
      (square) => square[0] === file && (rank === undefined || square[1] === rank),
    );
    const where = rank === undefined ? `the ${file}-file` : `${file}${rank}`;
    if (standing === undefined) return `${sideName(color)} has no pawn on ${where}`;
    return `${nameOf(board, standing)} cannot go to ${to}: pawns only move forward`;
  }
  const steps = Math.abs(rankOf(to) - rankOf(from));
  if (steps > 2) return `${nameOf(board, from)} cannot go as far as ${to} in one move`;
  if (steps === 2 && relativeRank(from, color) !== 2) {
    return `${nameOf(board, from)} has left its first square and goes one step only`;
  }
  const blocker = [...behind.slice(0, behind.indexOf(from)).reverse(), to].find((square) =>
    board.has(square),
  );
  return `${nameOf(board, from)} is blocked by ${nameOf(board, blocker ?? to)}`;
}

function forwardOf(color: Color): 1 | -1 {
  return color === 'white' ? 1 : -1;
}

function isPawn(board: Board, square: Square | undefined, color: Color): boolean {
  const piece = square === undefined ? undefined : board.get(square);
  return piece?.kind === 'pawn' && piece.color === color;
}
