/** What is known of positions by the work of hours: plain data, by the key of the position. */

/**
 * Who stands better, for the side to move: hundredths of a pawn, or mate in so many moves, less than nothing where
 * the side to move is mated.
 */
export type Score =
  | { readonly kind: 'pawns'; readonly hundredths: number }
  | { readonly kind: 'mate'; readonly moves: number };

/** What an engine would play, best first. */
export interface EngineLine {
  readonly score: Score;
  /** Canonical SAN; at least one. */
  readonly moves: readonly string[];
}

export interface EngineFact {
  /** `Position.key`. */
  readonly key: string;
  /** The engine's own name for itself, such as `Stockfish 15.1`. */
  readonly engine: string;
  /** What it was asked for, such as `nodes 400000, lines 3, hash 64`. */
  readonly settings: string;
  /** The depth that it finished, in half-moves. */
  readonly depth: number;
  /** At least one, the best first. */
  readonly lines: readonly EngineLine[];
}

/** Why a line of a file of facts says nothing: its number from 1, and one English clause. */
export interface FactFault {
  readonly line: number;
  readonly reason: string;
}
