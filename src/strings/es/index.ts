import type { Strings } from '../index.ts';
import { board } from './board.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { finding } from './finding.ts';
import { glyph } from './glyph.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';
import { position } from './position.ts';

export const es: Strings = {
  ...board,
  book,
  ...changes,
  finding,
  glyph,
  letter,
  ...page,
  position,
};
