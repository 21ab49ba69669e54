import type { Color } from '../../../chess/index.ts';
import type { ArgumentReader } from '../reading/argument-reader.ts';

/** What is counted of a side, from the start on or since a named position: `white 3`, `white 1 since quiet`. */
export function readCountSince(words: ArgumentReader): {
  readonly color: Color;
  readonly count: number;
  readonly since: string | undefined;
} {
  const color = words.color();
  const count = words.count(0);
  if (words.done) return { color, count, since: undefined };
  words.oneOf(['since']);
  return { color, count, since: words.label() };
}
