/** SAN on the board of the core: PGN standard, 8.2.3. */
import type { PieceKind } from '../types.ts';
import type { CoreMove, GameBoard } from './game-board.ts';

/**
 * The one legal move that plain SAN names, its `+` or `#` unread; more of the origin may be given than is
 * needed. Undefined where it names none, or more than one.
 */
export function readSan(board: GameBoard, written: string): CoreMove | undefined {
  return legal(board, readPlainSan(board, written));
}

/**
 * As `readSan`, but a move that is the only one of its kind may still leave the own king in check: for
 * whoever makes it at once.
 */
export function readPlainSan(board: GameBoard, written: string): CoreMove | undefined {
  const named = partsOf(written);
  if (named === undefined) return undefined;
  if ('castles' in named) return board.castling(named.castles);
  let only: CoreMove | undefined;
  let isLegal = false;
  for (const move of board.movesTo(named.to, named.kind)) {
    if (!isNamed(board, move, named)) continue;
    if (only === undefined) {
      only = move;
      continue;
    }
    // Of several the one counts that is legal.
    const isOther = legal(board, move) !== undefined;
    isLegal ||= legal(board, only) !== undefined;
    if (isLegal && isOther) return undefined;
    if (isOther) only = move;
    isLegal ||= isOther;
  }
  return only;
}

function isNamed(board: GameBoard, move: CoreMove, named: NamedMove): boolean {
  const { file, rank, takes, promotion } = named;
  return (
    (file === any || (move & 7) === file) &&
    (rank === any || ((move >> 4) & 7) === rank) &&
    move >> 14 === promotion &&
    board.takes(move) === takes
  );
}

interface NamedMove {
  readonly kind: PieceKind;
  /** From 0, or `any`. */
  readonly file: number;
  readonly rank: number;
  readonly takes: boolean;
  readonly to: string;
  /** As in a `CoreMove`. */
  readonly promotion: number;
}

const any = -1;

/** The parts of moves that were read before: all games of an archive have the same few thousand. */
const known = new Map<string, ReturnType<typeof parsePlain>>();
const mostKnown = 20_000;

function partsOf(written: string): ReturnType<typeof parsePlain> {
  const before = known.get(written);
  if (before !== undefined) return before;
  const parts = parsePlain(written);
  if (known.size >= mostKnown) known.clear();
  // What is read is short, so that no text of a whole file is held by a piece of it.
  if (parts !== undefined) known.set(written, parts);
  return parts;
}

/**
 * The parts of `[KQRBN]?[a-h]?[1-8]?x?[a-h][1-8](=[QRBN])?[+#]?`, or castling. By hand, since games of
 * an archive are read at a rate of a million moves a second.
 */
function parsePlain(written: string): NamedMove | { readonly castles: 'g' | 'c' } | undefined {
  let end = written.length;
  if (written[end - 1] === '+' || written[end - 1] === '#') end--;
  if (written.startsWith('O')) {
    const word = written.slice(0, end);
    if (word === 'O-O') return { castles: 'g' };
    return word === 'O-O-O' ? { castles: 'c' } : undefined;
  }
  let promotion = 0;
  if (written[end - 2] === '=') {
    promotion = promotionOf[written[end - 1] ?? ''] ?? 0;
    if (promotion === 0) return undefined;
    end -= 2;
  }
  const to = written.slice(end - 2, end);
  if (!(isFile(to.charCodeAt(0)) && isRank(to.charCodeAt(1)))) return undefined;
  const last = end - 2;
  const kind = kindOfCapital[written[0] ?? ''];
  let at = kind === undefined ? 0 : 1;
  let [file, rank, takes] = [any, any, false];
  if (at < last && isFile(written.charCodeAt(at))) file = written.charCodeAt(at++) - 97;
  if (at < last && isRank(written.charCodeAt(at))) rank = written.charCodeAt(at++) - 49;
  if (at < last && written[at] === 'x') {
    takes = true;
    at++;
  }
  return at === last ? { kind: kind ?? 'pawn', file, rank, takes, to, promotion } : undefined;
}

const kindOfCapital: Readonly<Record<string, PieceKind>> = {
  K: 'king',
  Q: 'queen',
  R: 'rook',
  B: 'bishop',
  N: 'knight',
};

/** Numbers of kinds, as in a `CoreMove`. */
const promotionOf: Readonly<Record<string, number>> = { Q: 2, R: 3, B: 4, N: 5 };

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
