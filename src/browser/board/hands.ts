import type { Color } from '../../chess/types.ts';
import type { BoardState } from './board-state.ts';

/** What lies over a board's drawing and takes the reader's acts: plays moves, or sets pieces. */
export interface Hands {
  /** They stand right behind the drawing, the first over it. */
  readonly elements: readonly HTMLElement[];
  /** Follows what the board shows, as seen from `view`. */
  setUp(state: BoardState, view: Color): void;
}
