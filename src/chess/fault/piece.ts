/** Why a move of a piece that is clearly named cannot be played. */
import { attacksFrom, attacksOf, slides } from '../attacks.ts';
import { type Board, readBoard, sideToMove, squaresOf } from '../board.ts';
import { nameOf, sideName } from '../names.ts';
import type { PieceSpelling } from '../spelling.ts';
import { between, isDark, relativeRank } from '../squares.ts';
import type { Color, Piece, PieceKind, Position, Square } from '../types.ts';
import { pawnReach, pawnReason } from './pawn.ts';
import { unsafeReason } from './safety.ts';

/**
 * What hinders a move whose piece does reach the square: the king's safety, or what the move
 * says of a capture or a promotion. Absent where no such piece reaches it.
 */
export function reachedReason(position: Position, spelling: PieceSpelling): string | undefined {
  const board = readBoard(position);
  const color = sideToMove(position);
  const { to } = spelling;
  const enPassant = position.fen.split(' ')[3] ?? '-';
  const reaching = candidates(board, color, spelling).filter((from) => {
    if (board.get(to)?.color === color) return false;
    const reach =
      board.get(from)?.kind === 'pawn'
        ? pawnReach(board, from, enPassant)
        : attacksFrom(board, from);
    return reach.includes(to);
  });
  const [first] = reaching;
  if (first === undefined) return undefined;
  const unsafe = reaching.map((from) => unsafeReason(board, from, to));
  if (!unsafe.includes(undefined)) return [...new Set(unsafe)].join(', and ');
  const safe = reaching[unsafe.indexOf(undefined)] ?? first;
  return promotionReason(board, safe, spelling) ?? captureReason(board, spelling);
}

/** Why no such piece reaches the square. */
export function unreachedReason(position: Position, spelling: PieceSpelling): string {
  const board = readBoard(position);
  const color = sideToMove(position);
  const { to } = spelling;
  const origin = originOf(spelling);
  const kind = kindOf(board, spelling);
  if (kind === undefined) return `no piece stands on ${origin}`;
  if (origin !== undefined && board.get(origin)?.color !== color) {
    const standing = board.get(origin);
    if (standing?.kind !== kind) return `no ${color} ${kind} stands on ${origin}`;
    return `it is ${sideName(color)}'s move here, and ${nameOf(board, origin)} is ${sideName(standing.color)}'s`;
  }
  const able = candidates(board, color, spelling);
  const own = board.get(to);
  if (own?.color === color) return `${sideName(color)}'s own ${own.kind} stands on ${to}`;
  if (kind === 'pawn' && (spelling.rank === undefined || able.length > 0))
    return pawnReason(board, color, Number(position.fen.split(' ')[4]), spelling);
  const [first] = able;
  if (first === undefined) return absentReason(color, kind, spelling);
  return (
    blockedReason(board, able, to) ??
    (able.length > 1
      ? `no ${kind} of ${sideName(color)}'s can reach ${to}`
      : cannotReach(board, first, to))
  );
}

function originOf({ file, rank }: PieceSpelling): Square | undefined {
  return file !== undefined && rank !== undefined ? file + rank : undefined;
}

function kindOf(board: Board, spelling: PieceSpelling): PieceKind | undefined {
  const origin = originOf(spelling);
  return spelling.kind ?? (origin === undefined ? undefined : board.get(origin)?.kind);
}

/** Where pieces stand that the spelling may name. */
function candidates(board: Board, color: Color, spelling: PieceSpelling): Square[] {
  const kind = kindOf(board, spelling);
  if (kind === undefined) return [];
  return squaresOf(board, color, kind).filter(
    (square) =>
      (spelling.file === undefined || square[0] === spelling.file) &&
      (spelling.rank === undefined || square[1] === spelling.rank),
  );
}

function promotionReason(board: Board, from: Square, { to, promotion }: PieceSpelling) {
  if (promotion === undefined) return undefined;
  const piece = board.get(from);
  if (piece?.kind !== 'pawn') return `only a pawn promotes, and a ${piece?.kind} stands on ${from}`;
  if (relativeRank(to, piece.color) !== 8) {
    return `a pawn promotes on its last rank only, and ${to} is not on it`;
  }
  return `a pawn becomes a queen, rook, bishop or knight, never a ${promotion}`;
}

function captureReason(board: Board, { to, capture }: PieceSpelling): string {
  if (capture) return `nothing stands on ${to} to capture`;
  const taken = board.get(to);
  if (taken === undefined) return `taking en passant on ${to} is written with an x`;
  return `a ${taken.color} ${taken.kind} stands on ${to}, and taking it is written with an x`;
}

function absentReason(color: Color, kind: PieceKind, { file, rank }: PieceSpelling): string {
  if (file !== undefined && rank !== undefined)
    return `no ${color} ${kind} stands on ${file}${rank}`;
  const where = file === undefined ? rank && ` on rank ${rank}` : ` on the ${file}-file`;
  return `${sideName(color)} has no ${kind}${where ?? ''}`;
}

/** Names what stands in the way of a sliding piece, of the one with the shortest way. */
function blockedReason(board: Board, able: readonly Square[], to: Square): string | undefined {
  const ways = able
    .filter((from) => slidesTowards(board.get(from), from, to))
    .map((from) => ({ from, way: between(from, to) ?? [] }))
    .sort((a, b) => a.way.length - b.way.length);
  for (const { from, way } of ways) {
    const blocker = way.find((square) => board.has(square));
    if (blocker !== undefined) {
      return `the way of ${nameOf(board, from)} to ${to} is blocked by ${nameOf(board, blocker)}`;
    }
  }
  return undefined;
}

/** Whether a piece would slide there on an empty board. */
function slidesTowards(piece: Piece | undefined, from: Square, to: Square): boolean {
  return piece !== undefined && slides(piece) && attacksOf(new Map(), piece, from).includes(to);
}

function cannotReach(board: Board, from: Square, to: Square): string {
  const kind = board.get(from)?.kind;
  if (from === to) return `${nameOf(board, from)} stands there already`;
  if (kind === 'bishop' && isDark(from) !== isDark(to)) {
    const [own, other] = isDark(from) ? ['dark', 'light'] : ['light', 'dark'];
    return `${nameOf(board, from)} moves on ${own} squares, and ${to} is ${other}`;
  }
  if (kind === 'king' && /^e1[cg]1$|^e8[cg]8$/.test(from + to)) {
    return `the king on ${from} moves one square only, and castling is written ${to[0] === 'g' ? 'O-O' : 'O-O-O'}`;
  }
  if (kind === 'king')
    return `the king on ${from} moves one square only, and ${to} is further away`;
  return `${nameOf(board, from)} cannot reach ${to} in one move`;
}
