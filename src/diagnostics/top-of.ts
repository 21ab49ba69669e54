import type { Place } from './place.ts';

/** The place of a whole file's beginning. */
export function topOf(file: string): Place {
  const top = { line: 1, column: 1, offset: 0 };
  return { file, start: top, end: top };
}
