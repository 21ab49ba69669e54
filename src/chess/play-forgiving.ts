/** Plays moves as an import may read them. */
import { isMoveFault, playMove } from './play.ts';
import { plainSpelling } from './spelling.ts';
import type { MoveFault, PlayedMove, Position } from './types.ts';

/**
 * As `playMove`, and also takes a small letter for a piece and a capture without its `x`, where one legal move
 * alone is so spelled: an import may mend both (PGN standard, 8.2.3.7). A small `b` is a file, and letters of
 * other languages are never guessed.
 */
export function playForgiving(position: Position, written: string): PlayedMove | MoveFault {
  const played = playMove(position, written);
  if (!isMoveFault(played)) return played;
  const plain = plainSpelling(written).replace(/^[nrqk]/, (letter) => letter.toUpperCase());
  const [meant, ...others] = played.meant.map(plainSpelling).filter((san) => {
    return san === plain || (!plain.includes('x') && san.replace('x', '') === plain);
  });
  return meant === undefined || others.length > 0 ? played : playMove(position, meant);
}
