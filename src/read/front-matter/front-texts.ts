import * as z from 'zod';

/** In letters: a longer one fits on no card, tab or list (a judgement, no source). */
const longestTitle = 200;

/** In bytes of UTF-8: with an ending it is still a file's name on every common system (255). */
const longestId = 200;

/** A title in front matter or settings. @param what names it, as in `a text, the title of the course`. */
export function titleText(what: string) {
  return z
    .string({ error: what })
    .trim()
    .min(1, { error: what })
    .max(longestTitle, { error: `a title of up to ${longestTitle} letters` });
}

/** Whether an id, which files are named by, is too long for that. */
export function isLongId(id: string): boolean {
  return new TextEncoder().encode(id).length > longestId;
}
