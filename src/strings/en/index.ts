import { glyphMeaning } from '../../movetext/glyphs.ts';
import { board } from './board.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { finding } from './finding.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';
import { position } from './position.ts';

/** Every word that Linewright itself says to readers, in English; a section is a file. */
export const en = {
  ...board,
  book,
  ...changes,
  finding,
  letter,
  ...page,
  position,
  glyph: glyphMeaning,
};
