import { type Counted, counted as inForm } from '../contract/sentence.ts';

/** A sentence with a number, in the right plural form. */
export function counted(sentence: Counted, n: number): string {
  return inForm(sentence, n, document.documentElement.lang);
}
