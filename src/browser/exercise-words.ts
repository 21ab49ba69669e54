import type { Color } from '../chess/types.ts';
import type { BoardWords } from './board/board-words.ts';
import type { EntryWords } from './board/move-entry.ts';

/** What an exercise says beside its board, in the page's language; gaps in braces. */
export interface ExerciseWords extends BoardWords, EntryWords {
  readonly exercise: {
    readonly giveUp: string;
    readonly again: string;
    readonly right: string;
    readonly also: string;
    readonly wrong: string;
    readonly legal: string;
    readonly given: string;
  };
  readonly cannotGo: string;
  readonly notYours: Readonly<Record<Color, string>>;
}
