import type { Place } from '../diagnostics/index.ts';

/** The first sign of a stretch: where a finding about a whole block is shown. */
export function firstSign({ file, start }: Place): Place {
  return { file, start, end: { ...start, column: start.column + 1, offset: start.offset + 1 } };
}
