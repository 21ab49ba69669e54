/** SAN on the board of the core: PGN standard, 8.2.3. */
import { type PieceKind, pieceKinds } from '../types.ts';
import type { CoreMove, GameBoard } from './game-board.ts';

/**
 * The one legal move that plain SAN names, its `+` or `#` unread; more of the origin may be given than is
 * needed. Undefined where it names none, or more than one.
 */
export function readSan(board: GameBoard, written: string): CoreMove | undefined {
  return legal(board, readPlainSan(board, written));
}

/** Emptied by whoever fills it: a list of its own for each of a million moves a second would cost more than the search. */
const candidates: CoreMove[] = [];

/**
 * As `readSan`, but a move that is the only one of its kind may still leave the own king in check: for
 * whoever makes it at once. What is read is `[KQRBN]?[a-h]?[1-8]?x?[a-h][1-8](=[QRBN])?[+#]?`, or castling; by hand,
 * since games of an archive are read at a rate of a million moves a second.
 */
export function readPlainSan(board: GameBoard, written: string): CoreMove | undefined {
  let end = written.length;
  if (written[end - 1] === '+' || written[end - 1] === '#') end--;
  if (written[0] === 'O') return readCastling(board, written.slice(0, end));
  let promotion = 0;
  if (written[end - 2] === '=') {
    promotion = kindAt(written, end - 1);
    if (promotion <= king) return undefined;
    end -= 2;
  }
  const last = end - 2;
  if (!(isFile(written.charCodeAt(last)) && isRank(written.charCodeAt(last + 1)))) return undefined;
  const kind = kindAt(written, 0);
  let at = kind === 0 ? 0 : 1;
  let [file, rank, takes] = [any, any, false];
  if (at < last && isFile(written.charCodeAt(at))) file = written.charCodeAt(at++) - 97;
  if (at < last && isRank(written.charCodeAt(at))) rank = written.charCodeAt(at++) - 49;
  if (at < last && written[at] === 'x') {
    takes = true;
    at++;
  }
  if (at !== last) return undefined;
  const to = 16 * (written.charCodeAt(last + 1) - 49) + written.charCodeAt(last) - 97;
  board.movesTo(to, kind || pawn, candidates);
  let only: CoreMove | undefined;
  let isLegal = false;
  let isOne = true;
  for (let move = candidates.pop(); move !== undefined; move = candidates.pop()) {
    const isNamed =
      (file === any || (move & 7) === file) &&
      (rank === any || ((move >> 4) & 7) === rank) &&
      move >> 14 === promotion &&
      board.takes(move) === takes;
    if (!isNamed) continue;
    if (only === undefined) {
      only = move;
      continue;
    }
    // Of several the one counts that is legal.
    const isOther = legal(board, move) !== undefined;
    isLegal ||= legal(board, only) !== undefined;
    if (isLegal && isOther) isOne = false;
    if (isOther) only = move;
    isLegal ||= isOther;
  }
  return isOne ? only : undefined;
}

function readCastling(board: GameBoard, written: string): CoreMove | undefined {
  if (written === 'O-O') return board.castling('g');
  return written === 'O-O-O' ? board.castling('c') : undefined;
}

const any = -1;

/** The number of a kind as cells of a `GameBoard` count it. */
const [king, pawn] = [1, 6];

/** By the codes of capitals; 0 for what is none. */
const kinds = Uint8Array.from(
  { length: 128 },
  (_, code) => 'KQRBN'.indexOf(String.fromCharCode(code)) + 1,
);

function kindAt(written: string, at: number): number {
  return kinds[written.charCodeAt(at)] ?? 0;
}

function isFile(code: number): boolean {
  return code >= 97 && code <= 104;
}

function isRank(code: number): boolean {
  return code >= 49 && code <= 56;
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
  return `${letterOf(kind)}${originOf(board, move, kind, from)}${sign}${to}`;
}

/** The file, else the rank, else both: as far as another piece of the kind could go there too (8.2.3.4). */
function originOf(board: GameBoard, move: CoreMove, kind: PieceKind, from: string): string {
  const moves: CoreMove[] = [];
  board.movesTo((move >> 7) & 0x7f, pieceKinds.indexOf(kind) + 1, moves);
  const others = moves
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
