import { numberedSan, type PieceLetters, sanIn } from '../chess/letters.ts';
import type { PathMove } from './paths.ts';

/** `9.b3` or `7...Be7`; without its number only where White's move stands before it. */
export function moveText(step: PathMove, letters: PieceLetters, bare = false): string {
  const { san } = step.move;
  return bare ? sanIn(letters, san) : numberedSan({ ...step, san }, letters);
}

/** Moves one after another: `3...c5 4.cxd5 exd5`. */
export function lineText(way: readonly PathMove[], letters: PieceLetters): string {
  return way
    .map((move, index) => moveText(move, letters, index > 0 && move.color === 'black'))
    .join(' ');
}
