import type { EmbedWords } from '../../contract/words.ts';

declare global {
  /** The site wraps the script in a function whose parameter this is: nothing of it is global. */
  const courseBoardWords: EmbedWords;
  /** And this: what the course's own look changes of `embedCss`. */
  const courseBoardLook: string;
}

/** What the board says, in the language of the course that the script comes from. */
export const embedWords: EmbedWords = courseBoardWords;

/** Rules for `:host`, empty where the course has our look. */
export const embedLook: string = courseBoardLook;
