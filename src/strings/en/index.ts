import { book } from './book.ts';
import { changes } from './changes.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';

/** Every word that Linewright itself says to readers, in English; a section is a file. */
export const en = { ...changes, ...page, book, letter };
