import type { Chapter } from '../types.ts';
import { walkTexts } from './walk-chapter.ts';

/** A word; of scripts that write without spaces, two signs count as one. */
const word =
  /[\p{sc=Han}\p{sc=Hiragana}\p{sc=Katakana}\p{sc=Thai}]{1,2}|\p{L}[\p{L}\p{M}\p{N}\u2019'-]*/gu;

/** Words that a reader reads in a minute who plays the moves on a board: common practice, no source. */
const wordsInMinute = 130;

/** How long a chapter takes its reader, in minutes. */
export function minutesToRead(chapter: Chapter): number {
  return Math.max(1, Math.round(countWords(chapter) / wordsInMinute));
}

/** How many words a chapter has, in its text and in the comments on its moves; the moves are none. */
export function countWords(chapter: Chapter): number {
  let count = 0;
  walkTexts(chapter, (node) => {
    if (node.type === 'text') count += node.value.match(word)?.length ?? 0;
  });
  return count;
}
