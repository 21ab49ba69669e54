/**
 * Turns a move that could not be played into a `MoveFault`: why, on the board, and what was
 * probably meant. Speed does not count here; a sentence that teaches does.
 */
import { inCheck } from '../attacks.ts';
import { otherColor, readBoard, sideToMove } from '../board.ts';
import { listed, nameOf, sideName } from '../names.ts';
import { type LegalMove, listMoves, settle } from '../rules.ts';
import { fits, isCastling, type PieceSpelling, type Spelling } from '../spelling.ts';
import type { MoveFault, Position } from '../types.ts';
import { castlingReason } from './castling.ts';
import { byPromotion, probableMoves } from './meant.ts';
import { reachedReason, unreachedReason } from './piece.ts';
import { unreadableReason } from './unreadable.ts';

/** @param spelling absent where the text is not written as a move
 *  @param legal all legal moves of the position */
export function explainFault(
  position: Position,
  written: string,
  spelling: Spelling | undefined,
  legal: readonly LegalMove[],
): MoveFault {
  const fitting = spelling === undefined ? [] : legal.filter((move) => fits(spelling, move));
  if (fitting.length > 1) return manyFit(position, fitting);
  const meant = probableMoves(written, legal);
  if (spelling === undefined) return { ...unreadableReason(written), meant };
  if (legal.length === 0) {
    const state = inCheck(position) ? 'mated' : 'stalemated';
    const reason = `${sideName(sideToMove(position))} is ${state}, and the game is over`;
    return { kind: 'illegal', reason, meant };
  }
  const named = asCastling(position, spelling);
  if (isCastling(named)) {
    return { kind: 'illegal', reason: castlingReason(position, named.castling), meant };
  }
  return pieceFault(position, named, legal, meant);
}

function pieceFault(
  position: Position,
  spelling: PieceSpelling,
  legal: readonly LegalMove[],
  meant: readonly string[],
): MoveFault {
  const unnamed = promotionMissing(position, spelling, legal);
  if (unnamed !== undefined) return unnamed;
  const reached = reachedReason(position, spelling);
  if (reached !== undefined) return { kind: 'illegal', reason: reached, meant };
  const wrongSide = wrongSideReason(position, spelling);
  if (wrongSide !== undefined) return { kind: 'illegal', reason: wrongSide, meant: [] };
  return { kind: 'illegal', reason: unreachedReason(position, spelling), meant };
}

function manyFit(position: Position, fitting: readonly LegalMove[]): MoveFault {
  const board = readBoard(position);
  const names = fitting.map(({ from }) => nameOf(board, from));
  const reason = `${listed(names)} can ${names.length > 2 ? 'all' : 'both'} go to ${fitting[0]?.to}`;
  return { kind: 'ambiguous', reason, meant: fitting.slice(0, 4).map(({ san }) => san) };
}

function promotionMissing(
  position: Position,
  spelling: PieceSpelling,
  legal: readonly LegalMove[],
): MoveFault | undefined {
  if (spelling.promotion !== undefined) return undefined;
  const promoting = legal
    .filter((move) => fits({ ...spelling, ...pick(move) }, move) && move.promotion !== undefined)
    .sort(byPromotion);
  const [first] = promoting;
  if (first === undefined) return undefined;
  const pawn = nameOf(readBoard(position), first.from);
  const reason = `${pawn} promotes on ${first.to}, and the move does not say to which piece`;
  return { kind: 'ambiguous', reason, meant: promoting.slice(0, 4).map(({ san }) => san) };
}

function pick({ promotion }: LegalMove) {
  return promotion === undefined ? {} : { promotion };
}

/** Asks the same of the position with the other side to move. */
function wrongSideReason(position: Position, spelling: PieceSpelling): string | undefined {
  // Then the other side could only take the king.
  if (inCheck(position)) return undefined;
  const color = sideToMove(position);
  const other = otherColor(color);
  const fields = position.fen.split(' ');
  fields[1] = other === 'white' ? 'w' : 'b';
  fields[3] = '-';
  const move = listMoves(settle(fields.join(' '))).find((each) => fits(spelling, each));
  if (move === undefined) return undefined;
  const piece = nameOf(readBoard(position), move.from);
  return `it is ${sideName(color)}'s move here, and ${piece} is ${sideName(other)}'s`;
}

/** A king that is said to go from its home to the c- or g-file castles, as engines write it. */
function asCastling(position: Position, spelling: Spelling): Spelling {
  if (isCastling(spelling)) return spelling;
  const home = sideToMove(position) === 'white' ? 'e1' : 'e8';
  const { file = '', rank = '', to } = spelling;
  const king = readBoard(position).get(home)?.kind === 'king';
  if (!king || file + rank !== home || to[1] !== home[1]) return spelling;
  if (to[0] === 'g') return { castling: 'king' };
  return to[0] === 'c' ? { castling: 'queen' } : spelling;
}
