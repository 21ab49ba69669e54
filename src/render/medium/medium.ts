import type { ElementContent } from 'hast';
import type { BoardPicture } from '../../draw/index.ts';
import type { Target } from '../document.ts';

/** How what a document shows reaches its reader: what differs between a page, paper, a book and a letter. */
export interface Medium {
  /** Whether moves are played through and folds opened by a script or a click. */
  readonly isLive: boolean;
  /** Whether the style sheet of pages is there, which draws the signs that few fonts have. */
  readonly drawsSigns?: boolean;
  /** A board that stands in the text. */
  readonly board: (picture: BoardPicture) => ElementContent;
  /** Where a target stands in the medium; nothing where a reader of it cannot go there. */
  readonly addressOf: (target: Target) => string | undefined;
  /** Whether diagrams are numbered through the course. */
  readonly numbersDiagrams?: boolean;
  /** Whether the position that moves end with is shown below them. */
  readonly showsLastBoards?: boolean;
}
