import type { Diagnostic } from '../diagnostic.ts';
import { createLocator } from '../locate.ts';

/** An error at the first place of some words in a file `a.md`. */
export function finding(text: string, words: string): Diagnostic {
  const pointAt = createLocator(text);
  const at = text.indexOf(words);
  const place = { file: 'a.md', start: pointAt(at), end: pointAt(at + words.length) };
  return { rule: 'some-rule', severity: 'error', message: 'It is wrong.', place, related: [] };
}

export function courseText(text: string): (file: string) => string | undefined {
  return (file) => (file === 'a.md' ? text : undefined);
}
