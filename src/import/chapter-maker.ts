import { UserError } from '../diagnostics/index.ts';
import type { DraftChapter } from './draft-chapter.ts';
import type { DraftGame } from './types.ts';

/** Whole games of a file as text, and the number of the first. */
export interface PartOfGames {
  readonly text: string;
  readonly number: number;
}

/** Is given all games of a file, some at a time, and makes chapters of them. It keeps text, not games. */
export interface ChapterMaker {
  readonly add: (games: readonly DraftGame[], part: PartOfGames) => void;
  readonly makeChapters: () => DraftChapter[];
}

/** The most chapters of a draft: nobody goes through more of them by hand, as a draft must be. */
const mostChapters = 5000;

/** @throws UserError where there would be too many chapters. */
export function checkNumber(chapters: number): void {
  if (chapters <= mostChapters) return;
  throw new UserError(
    `more than ${mostChapters.toLocaleString('en')} chapters would be made of the file`,
    'give `--by branch`, which puts games with the same first moves into one, or a part of the file',
  );
}
