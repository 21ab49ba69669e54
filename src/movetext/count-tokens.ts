import { createScanner } from './scanner.ts';

/** How many moves, comments, brackets and other tokens a game has; stops where there are more than `most`. */
export function countTokens(text: string, most: number): number {
  const scanner = createScanner(text, true);
  let count = 0;
  while (count <= most && scanner.take().kind !== 'end') count++;
  return count;
}
