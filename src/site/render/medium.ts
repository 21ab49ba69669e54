import type { ElementContent } from 'hast';
import { type BoardPicture, drawBoardInPage } from '../../draw/index.ts';
import type { GameBlock, MovesBlock } from '../../model/types.ts';

/** How what a chapter shows reaches its reader: what differs between a page, a book and a letter. */
export interface Medium {
  /** A board that stands in the text. */
  readonly board: (picture: BoardPicture) => ElementContent;
  /** Whether diagrams are numbered through the course. */
  readonly numbersDiagrams?: boolean;
  /** Whether long lists are folded, to be opened by a click. */
  readonly folds: boolean;
  /** What stands below moves that a reader cannot play through; a page shows a board beside them. */
  readonly below?: (block: MovesBlock | GameBlock) => ElementContent[];
}

/** A page of the site: boards are drawn into it, and a script moves the one beside the text. */
export const pageMedium: Medium = {
  numbersDiagrams: true,
  folds: true,
  board: (picture) => ({ type: 'raw', value: drawBoardInPage(picture) }),
};
