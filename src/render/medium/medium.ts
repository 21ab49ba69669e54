import type { ElementContent } from 'hast';
import type { BoardPicture } from '../../draw/index.ts';
import type { Target } from '../document.ts';

/** How a document reaches its reader: what differs between a page, paper, a book and a letter. */
export interface Medium {
  /** Whether a script plays through moves, and folds open at a click. */
  readonly isLive: boolean;
  /**
   * Whether the tree is only made into HTML: what is the same in all media comes written, and what is live may share
   * nodes with the document.
   */
  readonly isWritten?: boolean;
  /** Whether the pages' style sheet draws the signs that few fonts have. */
  readonly drawsSigns?: boolean;
  /** Renders a board in the text. */
  readonly board: (picture: BoardPicture) => ElementContent;
  /** The address of a target; undefined where readers of the medium cannot follow a link. */
  readonly addressOf: (target: Target) => string | undefined;
  /** Whether diagrams are numbered through the course. */
  readonly numbersDiagrams?: boolean;
  /** Whether the last position of a block is shown below it. */
  readonly showsLastBoards?: boolean;
}
