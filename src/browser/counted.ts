import { type Counted, counted as inForm } from '../contract/sentence.ts';

export function counted(sentence: Counted, n: number): string {
  return inForm(sentence, n, document.documentElement.lang);
}
