/** The types of the chess room. Everything is plain, immutable, serialisable data. */

export const colors = ['white', 'black'] as const;
export type Color = (typeof colors)[number];

export const pieceKinds = ['king', 'queen', 'rook', 'bishop', 'knight', 'pawn'] as const;
export type PieceKind = (typeof pieceKinds)[number];

/** A square's name, `a1` to `h8`. */
export type Square = string;

export interface Piece {
  readonly color: Color;
  readonly kind: PieceKind;
}

/**
 * A legal position. `key` is its identity in the sense of the FIDE Laws, article 9.2: the first
 * four fields of the FEN, where the en-passant square is given only if such a capture is legal.
 * `fen` is the key with the two move counters.
 */
export interface Position {
  readonly fen: string;
  readonly key: string;
}

/** A move that was played. `san` is its canonical SAN (PGN standard, 8.2.3). */
export interface PlayedMove {
  readonly san: string;
  readonly from: Square;
  readonly to: Square;
  readonly promotion?: PieceKind;
  readonly color: Color;
  /** The full-move number of the position in which it was played, from 1. */
  readonly number: number;
  readonly after: Position;
}

/** A tree of moves that were played, without anybody's words. */
export interface PlayedTree {
  /** FEN of the position that it starts from. */
  readonly start: string;
  /** Every move; a parent stands before its children. */
  readonly moves: readonly {
    /** Index in `moves` of the move before it; -1 for a first move. */
    readonly parent: number;
    /** Canonical SAN. */
    readonly san: string;
    /** `Position.fen` after the move. */
    readonly fen: string;
  }[];
}

/** Why a written move cannot be played. */
export interface MoveFault {
  readonly kind: 'illegal' | 'ambiguous' | 'unreadable';
  /**
   * One English clause about the board, without a full stop, such as
   * `the knight on c3 is pinned to the king on e1 by the bishop on b4`.
   */
  readonly reason: string;
  /** Legal moves that were probably meant, best first, as canonical SAN; at most four. */
  readonly meant: readonly string[];
}

/** Why a FEN describes no position: one English clause, and the offset in the text where it shows. */
export interface FenFault {
  readonly reason: string;
  readonly offset: number;
}
