import type { Color } from '../../chess/types.ts';
import type { Words } from '../words.ts';

export interface EmbedWords extends Words {
  readonly toMove: Readonly<Record<Color, string>>;
  /** Leads into the course. */
  readonly open: string;
}

declare global {
  /** The site wraps the script in a function whose parameter this is: nothing of it is global. */
  const courseBoardWords: EmbedWords;
}

/** What the board says, in the language of the course that the script comes from. */
export const embedWords: EmbedWords = courseBoardWords;
