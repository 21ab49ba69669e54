import * as z from 'zod';

/** In characters; a longer title fits on no card, tab or list (our judgement, no source). */
const longestTitle = 200;

/** In bytes of UTF-8. With a file ending added, it stays below the limit of common file systems (255). */
const longestId = 200;

/** A title in front matter or settings. @param what names it, as in `a text, the title of the course`. */
export function titleText(what: string) {
  return z
    .string({ error: what })
    .trim()
    .min(1, { error: what })
    .max(longestTitle, { error: `a title of up to ${longestTitle} letters` });
}

/** Whether an id is too long to name files by. */
export function isLongId(id: string): boolean {
  return new TextEncoder().encode(id).length > longestId;
}
