import { catalogueOf } from './catalogue.ts';
import * as de from './de/index.ts';
import * as english from './en/index.ts';
import * as es from './es/index.ts';

export { dateLanguage, dayInWords } from './date-language.ts';

export type Strings = ReturnType<typeof catalogueOf>;

const en = catalogueOf(english);
const catalogues = new Map([
  ['de', catalogueOf(de)],
  ['en', en],
  ['es', catalogueOf(es)],
]);

/**
 * The catalogue for a BCP 47 tag; a language without one gets English.
 * @param notation of the course: `english` has the English letters in any language.
 */
export function stringsFor(language: string, notation?: string): Strings {
  const strings = catalogues.get(primaryOf(language)) ?? en;
  return notation === 'english' ? { ...strings, pieceLetters: en.pieceLetters } : strings;
}

const rightToLeft = new Set(['ar', 'dv', 'fa', 'he', 'ku', 'ps', 'sd', 'ug', 'ur', 'yi']);

/** The writing direction of a BCP 47 tag's language. */
export function directionOf(language: string): 'ltr' | 'rtl' {
  return rightToLeft.has(primaryOf(language)) ? 'rtl' : 'ltr';
}

/**
 * Whether a language has no words here and is written in other letters than the English that it gets, so that
 * the two can be told apart by their letters.
 */
export function fallsBackVisibly(language: string): boolean {
  if (catalogues.has(primaryOf(language))) return false;
  return new Intl.Locale(language).maximize().script !== 'Latn';
}

function primaryOf(language: string): string {
  const [primary = ''] = language.toLowerCase().split('-');
  return primary;
}
