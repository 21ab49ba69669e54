/**
 * The reader's settings: their form, and what only some readers ask for, moves in other letters and their sound.
 * Loaded by `begin.ts` for those readers, or when the form is asked for.
 */
import { settingsAsked } from '../../contract/reader-settings.ts';
import { openForm } from './form.ts';
import { followNotation } from './notation.ts';
import { openShare } from './share.ts';
import { hearMoves } from './sound.ts';

addEventListener(settingsAsked, (asked) => {
  const { detail: by } = asked as CustomEvent<Element>;
  void (by.matches('.share') ? openShare() : openForm());
});
followNotation();
hearMoves();
