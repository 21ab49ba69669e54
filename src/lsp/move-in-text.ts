import type { ProseMovesNode } from '../model/index.ts';

/**
 * Which of the moves of a piece of inline code stands at an offset of it, from 0; the last one before it.
 * @param text the file from where the code begins.
 */
export function moveInText({ moves }: ProseMovesNode, text: string, offset: number): number {
  let at = 0;
  let found = 0;
  for (const [index, move] of moves.entries()) {
    const start = text.indexOf(move.text, at);
    if (start < 0 || start > offset) break;
    found = index;
    at = start + move.text.length;
  }
  return found;
}
