import type { Vocabulary } from '../vocabulary.ts';
import { english } from './english.ts';
import { german } from './german.ts';
import { spanish } from './spanish.ts';

const vocabularies = new Map([english, german, spanish].map((one) => [one.language, one]));

/** What is known of a language, by its BCP 47 tag; nothing of any but English, German and Spanish. */
export function vocabularyFor(tag: string): Vocabulary | undefined {
  return vocabularies.get(tag.toLowerCase().split('-')[0] ?? '');
}
