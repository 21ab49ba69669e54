import type { Chapter } from '../types.ts';
import { textNodes } from './walk-chapter.ts';

/** A word. In scripts without spaces, two characters count as one word. */
const word =
  /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Thai}]{1,2}|\p{L}[\p{L}\p{M}\p{N}\u2019'-]*/gu;

/** Words a minute for a reader who plays the moves on a board (common practice, no source). */
const wordsInMinute = 130;

/** The time to read a chapter, in minutes. */
export function minutesToRead(chapter: Chapter): number {
  return Math.max(1, Math.round(countWords(chapter) / wordsInMinute));
}

/** The number of words in a chapter's text and comments, without moves. */
export function countWords(chapter: Chapter): number {
  let count = 0;
  for (const { value } of textNodes(chapter, 'text')) while (word.test(value)) count++;
  return count;
}
