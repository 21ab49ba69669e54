import { glyphMeaning } from '../../movetext/glyphs.ts';
import { board } from './board.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { compare } from './compare.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';
import { position } from './position.ts';
import { practice } from './practice.ts';

/** Every word that Linewright itself says to readers, in English; a section is a file. */
export const en = {
  ...board,
  book,
  ...changes,
  compare,
  letter,
  ...page,
  position,
  ...practice,
  glyph: glyphMeaning,
};
