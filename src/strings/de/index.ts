import type { Strings } from '../index.ts';
import { board } from './board.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { compare } from './compare.ts';
import { glyph } from './glyph.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';
import { position } from './position.ts';
import { practice } from './practice.ts';

export const de: Strings = {
  ...board,
  book,
  ...changes,
  compare,
  glyph,
  letter,
  ...page,
  position,
  ...practice,
};
