import type { ElementContent } from 'hast';
import { text } from './hast.ts';

type Filling = string | ElementContent | readonly ElementContent[];

/**
 * A sentence of the catalogue with its gaps filled: `Leaves the course {after}.` The words keep
 * the order of their language, and what fills a gap may be a link.
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

/** `a`, `a and b`, `a, b and c`, of words or links. */
export function inSeries(items: readonly ElementContent[], and: string): ElementContent[] {
  return items.flatMap((item, index) => {
    if (index === 0) return [item];
    return [text(index === items.length - 1 ? ` ${and} ` : ', '), item];
  });
}
