import type { Strings } from '../index.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';

export const de: Strings = { ...changes, ...page, book, letter };
