import type { Strings } from '../index.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { page } from './page.ts';

export const es: Strings = { ...book, ...changes, ...page };
