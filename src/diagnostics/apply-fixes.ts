import type { Fix } from './diagnostic.ts';

/**
 * The text with the repairs made: each replaces its range and nothing else. Of two that overlap
 * only the first is made; the next run finds the other again.
 */
export function applyFixes(text: string, fixes: readonly Fix[]): string {
  const inOrder = [...fixes].sort((a, b) => a.place.start.offset - b.place.start.offset);
  let result = '';
  let done = 0;
  for (const { place, text: right } of inOrder) {
    if (place.start.offset < done) continue;
    result += text.slice(done, place.start.offset) + right;
    done = place.end.offset;
  }
  return result + text.slice(done);
}
