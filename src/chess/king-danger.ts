/** What stands against a move for the sake of the king, as squares: FIDE Laws, 3.8.2 and 3.9. */
import { attackersOn } from './attacks.ts';
import { type Board, kingOf, moved, otherColor, readBoard } from './board.ts';
import { between } from './squares.ts';
import type { Color, Position, Square } from './types.ts';

export interface KingDanger {
  readonly kind: 'into-check' | 'stays-in-check' | 'pinned' | 'opens-king';
  readonly king: Square;
  /** At least one. */
  readonly attackers: readonly Square[];
}

/** Why the own king would be in check after a piece has gone from one square to another; absent if it would not. */
export function kingDanger(board: Board, from: Square, to: Square): KingDanger | undefined {
  const piece = board.get(from);
  if (piece === undefined) return undefined;
  const other = otherColor(piece.color);
  const after = moved(board, from, to);
  const king = kingOf(after, piece.color);
  if (king === undefined) return undefined;
  const attackers = attackersOn(after, king, other);
  if (attackers.length === 0) return undefined;
  if (piece.kind === 'king') return { kind: 'into-check', king, attackers };
  const before = attackersOn(board, king, other);
  const staying = attackers.filter((square) => before.includes(square));
  if (staying.length > 0) return { kind: 'stays-in-check', king, attackers: staying };
  // An en passant capture takes two pawns off a line: then the pawn that moves is not pinned.
  const alone = (way: readonly Square[] = []) =>
    way.includes(from) && way.every((each) => each === from || !board.has(each));
  const pinning = attackers.filter((square) => alone(between(square, king)));
  return pinning.length > 0
    ? { kind: 'pinned', king, attackers: pinning }
    : { kind: 'opens-king', king, attackers };
}

export type CastlingBar =
  /** The king or the rook has moved before. */
  | { readonly kind: 'castling-lost' }
  /** A piece stands between the king and the rook. */
  | { readonly kind: 'blocked'; readonly by: Square }
  | {
      readonly kind: 'castling-out-of-check' | 'castling-through-check' | 'into-check';
      /** Where the king would be in check. */
      readonly at: Square;
      readonly attackers: readonly Square[];
    };

/** Why a side may not castle; absent if it may, where it is to move. */
export function castlingBar(
  position: Position,
  color: Color,
  wing: 'king' | 'queen',
): CastlingBar | undefined {
  const board = readBoard(position);
  const rank = color === 'white' ? '1' : '8';
  const letter = wing === 'king' ? 'K' : 'Q';
  const rights = position.fen.split(' ')[2] ?? '';
  if (!rights.includes(color === 'white' ? letter : letter.toLowerCase())) {
    return { kind: 'castling-lost' };
  }
  const [rook, passed, reached] = wing === 'king' ? 'hfg' : 'adc';
  const home = `e${rank}`;
  const by = between(home, `${rook}${rank}`)?.find((square) => board.has(square));
  if (by !== undefined) return { kind: 'blocked', by };
  const ways = [
    ['castling-out-of-check', home],
    ['castling-through-check', `${passed}${rank}`],
    ['into-check', `${reached}${rank}`],
  ] as const;
  for (const [kind, at] of ways) {
    const attackers = attackersOn(board, at, otherColor(color));
    if (attackers.length > 0) return { kind, at, attackers };
  }
  return undefined;
}
