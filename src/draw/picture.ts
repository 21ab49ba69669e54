import type { Color, Square } from '../chess/index.ts';
import type { BoardArrow } from './arrows.ts';
import type { LastMove } from './marks.ts';

/** What a board shows, however it is drawn. */
export interface BoardPicture {
  /** A FEN, or its first field. */
  readonly placement: string;
  /** The side at the bottom; White unless said. */
  readonly view?: Color | undefined;
  /** Letters and figures outside the board; shown unless `false`. */
  readonly coordinates?: boolean | undefined;
  readonly marks?: readonly Square[] | undefined;
  readonly arrows?: readonly BoardArrow[] | undefined;
  readonly lastMove?: LastMove | undefined;
  /** Shows a sign of the side to move in the corner where the coordinates meet. */
  readonly turn?: Color | undefined;
  /** What the picture is, in a few words, for readers who do not see it. */
  readonly title?: string | undefined;
  /** The position in words. */
  readonly desc?: string | undefined;
}
