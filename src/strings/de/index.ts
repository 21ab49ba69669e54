import type { Strings } from '../index.ts';
import { book } from './book.ts';
import { page } from './page.ts';

export const de: Strings = { ...book, ...page };
