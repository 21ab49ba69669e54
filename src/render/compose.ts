import type { ElementContent } from 'hast';
import { text } from './hast.ts';

type Filling = string | ElementContent | readonly ElementContent[];

/**
 * Fills the gaps of a sentence from the catalogue: `Leaves the course {after}.` The word order is that of the
 * language, and a gap may take a link.
 */
export function compose(
  sentence: string,
  parts: Readonly<Record<string, Filling>>,
): ElementContent[] {
  return sentence.split(/\{(\w+)\}/).flatMap((piece, index): ElementContent[] => {
    const part = index % 2 === 0 ? piece : parts[piece];
    if (part === undefined || part === '') return [];
    if (typeof part === 'string') return [text(part)];
    return 'type' in part ? [part] : [...part];
  });
}

/** Joins words or links as `a`, `a and b`, `a, b and c`. */
export function inSeries(items: readonly ElementContent[], and: string): ElementContent[] {
  return items.flatMap((item, index) => {
    if (index === 0) return [item];
    return [text(index === items.length - 1 ? ` ${and} ` : ', '), item];
  });
}
