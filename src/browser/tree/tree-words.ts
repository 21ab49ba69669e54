import type { MoveWords } from '../course-move.ts';

/** What the tree says in the page's language; gaps in braces. */
export interface TreeWords extends MoveWords {
  readonly label: string;
  readonly unfoldAll: string;
  readonly foldAll: string;
  readonly start: string;
  readonly elsewhere: string;
  readonly ways: string;
  readonly unfold: string;
  readonly see: string;
  readonly same: string;
}
