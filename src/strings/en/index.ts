/** Every word that Linewright itself says to readers, in English; a section is a file. */
export { glyphMeaning as glyph } from '../../movetext/glyphs.ts';
export { board } from './board.ts';
export { book } from './book.ts';
export { changes } from './changes.ts';
export { claims } from './claims.ts';
export { compare } from './compare.ts';
export { edition } from './edition.ts';
export { embed } from './embed.ts';
export { exercises } from './exercises.ts';
export { finding } from './finding.ts';
export { first } from './first.ts';
export { free } from './free.ts';
export { handout } from './handout.ts';
export { letter } from './letter.ts';
export { page } from './page.ts';
export { position } from './position.ts';
export { practice } from './practice.ts';
export { settings } from './settings.ts';
export { share } from './share.ts';
export { shelf } from './shelf.ts';
export { signs } from './signs.ts';

/** BCP 47: whose rules its plurals follow. */
export const language: string = 'en';
