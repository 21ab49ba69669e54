import { en } from './en.ts';

export type Strings = typeof en;

/** The catalogue for a BCP 47 tag; a language without one gets English. */
export function stringsFor(_language: string): Strings {
  return en;
}

const rightToLeft = new Set(['ar', 'dv', 'fa', 'he', 'ku', 'ps', 'sd', 'ug', 'ur', 'yi']);

/** The writing direction of a BCP 47 tag's language. */
export function directionOf(language: string): 'ltr' | 'rtl' {
  const [primary = ''] = language.toLowerCase().split('-');
  return rightToLeft.has(primary) ? 'rtl' : 'ltr';
}
