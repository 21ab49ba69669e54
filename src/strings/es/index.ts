import type { Strings } from '../index.ts';
import { board } from './board.ts';
import { book } from './book.ts';
import { changes } from './changes.ts';
import { claims } from './claims.ts';
import { compare } from './compare.ts';
import { edition } from './edition.ts';
import { embed } from './embed.ts';
import { exercises } from './exercises.ts';
import { finding } from './finding.ts';
import { first } from './first.ts';
import { free } from './free.ts';
import { glyph } from './glyph.ts';
import { handout } from './handout.ts';
import { letter } from './letter.ts';
import { page } from './page.ts';
import { position } from './position.ts';
import { practice } from './practice.ts';
import { settings } from './settings.ts';
import { share } from './share.ts';
import { shelf } from './shelf.ts';
import { signs } from './signs.ts';

export const es: Strings = {
  language: 'es',
  ...board,
  book,
  ...changes,
  claims,
  compare,
  ...embed,
  exercises,
  finding,
  first,
  ...free,
  glyph,
  letter,
  ...page,
  position,
  ...practice,
  edition,
  handout,
  settings,
  share,
  shelf,
  signs,
};
