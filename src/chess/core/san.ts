/** SAN on the board of the core: PGN standard, 8.2.3. */
import { kindOfLetter } from '../board.ts';
import type { PieceKind } from '../types.ts';
import type { CoreMove, GameBoard } from './game-board.ts';

const plainMove = /^([KQRBN]?)([a-h]?)([1-8]?)(x?)([a-h][1-8])(?:=([QRBN]))?[+#]?$/;
const castling = /^O-O(-O)?[+#]?$/;

/**
 * The one legal move that plain SAN names, its `+` or `#` unread; more of the origin may be given than is
 * needed. Undefined where it names none, or more than one.
 */
export function readSan(board: GameBoard, written: string): CoreMove | undefined {
  const [whole, letter, file, rank, sign, to = '', promoted] = plainMove.exec(written) ?? [];
  if (whole === undefined) {
    const [castles, long] = castling.exec(written) ?? [];
    return castles === undefined ? undefined : legal(board, board.castling(long ? 'c' : 'g'));
  }
  const kind = kindOfLetter[(letter || 'P').toLowerCase()] ?? 'pawn';
  const promotion = promoted && kindOfLetter[promoted.toLowerCase()];
  let found: CoreMove | undefined;
  for (const move of board.movesTo(to, kind)) {
    const { from, taken, ...described } = board.describe(move);
    if (file && from[0] !== file) continue;
    if (rank && from[1] !== rank) continue;
    if ((taken !== undefined) !== (sign === 'x')) continue;
    if (described.promotion !== promotion) continue;
    if (legal(board, move) === undefined) continue;
    if (found !== undefined) return undefined;
    found = move;
  }
  return found;
}

/**
 * Plays a legal move and writes it as canonical SAN. The board is then after the move.
 */
export function makeSan(board: GameBoard, move: CoreMove): string {
  const short = writeShort(board, move);
  board.make(move);
  if (!board.inCheck()) return short;
  return `${short}${board.hasLegalMove() ? '+' : '#'}`;
}

/** SAN without the sign of check or mate. */
function writeShort(board: GameBoard, move: CoreMove): string {
  const { kind, from, to, promotion, taken } = board.describe(move);
  if (kind === 'king' && from[0] === 'e' && (to[0] === 'g' || to[0] === 'c')) {
    return to[0] === 'g' ? 'O-O' : 'O-O-O';
  }
  const sign = taken === undefined ? '' : 'x';
  if (kind === 'pawn') {
    const origin = taken === undefined ? '' : from[0];
    return `${origin}${sign}${to}${promotion === undefined ? '' : `=${letterOf(promotion)}`}`;
  }
  return `${letterOf(kind)}${originOf(board, move, kind, from, to)}${sign}${to}`;
}

/** The file, else the rank, else both: as far as another piece of the kind could go there too (8.2.3.4). */
function originOf(
  board: GameBoard,
  move: CoreMove,
  kind: PieceKind,
  from: string,
  to: string,
): string {
  const others = board
    .movesTo(to, kind)
    .filter((other) => other !== move && legal(board, other) !== undefined)
    .map((other) => board.describe(other).from);
  if (others.length === 0) return '';
  if (others.every((other) => other[0] !== from[0])) return from[0] ?? '';
  return others.every((other) => other[1] !== from[1]) ? (from[1] ?? '') : from;
}

/** The move, if it does not leave the own king in check. */
function legal(board: GameBoard, move: CoreMove | undefined): CoreMove | undefined {
  if (move === undefined || !board.make(move)) return undefined;
  board.unmake();
  return move;
}

const letters: Readonly<Record<PieceKind, string>> = {
  king: 'K',
  queen: 'Q',
  rook: 'R',
  bishop: 'B',
  knight: 'N',
  pawn: 'P',
};

function letterOf(kind: PieceKind): string {
  return letters[kind];
}
