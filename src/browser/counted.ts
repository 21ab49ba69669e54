import { type Counted, counted as inForm } from '../contract/sentence.ts';

/** A sentence with its number, in the form that the page's language has for it. */
export function counted(sentence: Counted, n: number): string {
  return inForm(sentence, n, document.documentElement.lang);
}
