/**
 * The keys that pages listen for beside those of every browser, by where they act, as `KeyboardEvent.key` names them:
 * what the page of signs and keys tells. A test holds it against the scripts.
 */
export const readerKeys = {
  /** The moves of a chapter; what scrolls a page acts only on a move or a board. */
  reading: ['ArrowRight', 'ArrowLeft', 'ArrowDown', 'ArrowUp', 'Home', 'End'],
  /** The squares of a board that is played on or set up. */
  squares: ['Arrows', 'Enter', 'Escape', 'Delete'],
  /** The lines below an answered exercise. */
  exercise: ['ArrowRight', 'ArrowLeft'],
  /** The tree of all moves. */
  tree: ['ArrowRight', 'ArrowLeft', 'ArrowDown', 'ArrowUp'],
  /** The field for moves and positions of the search. */
  search: ['Enter'],
} as const;

export type KeyPlace = keyof typeof readerKeys;
export type KeyOf<Place extends KeyPlace> = (typeof readerKeys)[Place][number];
