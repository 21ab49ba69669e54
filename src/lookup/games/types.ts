import type { Color } from '../../chess/index.ts';

/** What a game's tags say of it; a missing name is empty. */
export interface GameHead {
  /** Its place in the file, from 1. */
  readonly number: number;
  readonly white: string;
  readonly black: string;
  readonly event: string;
  readonly date: string;
  readonly result: '1-0' | '0-1' | '1/2-1/2' | '*';
}

/** A move of a game in canonical SAN, with its number in the game. */
export interface GameMove {
  readonly san: string;
  readonly color: Color;
  readonly number: number;
}

/** The last position of a game that the course knows. */
export interface GameExit {
  /** Index in the table of the course. */
  readonly position: number;
  /** The move that led there; absent where the game began there. */
  readonly last?: GameMove;
  /** The move that was played there; absent where the game ended. */
  readonly next?: GameMove;
}

/**
 * Where the course's own side first played what the course has there beside its advice, an option
 * or a bad move: `next`.
 */
export interface GameAside extends GameExit {
  readonly next: GameMove;
}

export interface GameFault {
  readonly kind:
    | 'illegal'
    | 'ambiguous'
    | 'unreadable'
    | 'comment-unclosed'
    | 'variation-unclosed'
    | 'start'
    | 'too-long';
  /** What stands in the game: a move, a text, a FEN. */
  readonly written: string;
  /** The number of the move where it stands, such as `12...`; empty before the first. */
  readonly at: string;
  /** One English clause about the board or the FEN, without a full stop; may be empty. */
  readonly reason: string;
}

/**
 * A game against the course: it `met` it, stayed `apart` from it all the way, has no moves
 * (`empty`), is `broken`, or is of another `variant` of chess. Only the first two are compared.
 */
export type ComparedGame = GameHead &
  (
    | { readonly kind: 'met'; readonly exit: GameExit; readonly aside?: GameAside }
    | { readonly kind: 'apart' | 'empty' }
    | { readonly kind: 'broken'; readonly fault: GameFault }
    | { readonly kind: 'variant'; readonly variant: string }
  );
