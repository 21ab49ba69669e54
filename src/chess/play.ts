/** Plays moves as authors write them. */
import { explainFault } from './fault/explain.ts';
import { Recent } from './recent.ts';
import { listMoves, playSan } from './rules.ts';
import { fits, readSpelling } from './spelling.ts';
import type { MoveFault, PlayedMove, Position } from './types.ts';

/** Results by the FEN and the spelling: a course plays the same beginnings again and again. */
const recent = new Recent<string, PlayedMove | MoveFault>(50_000);

/**
 * Plays a move as an author wrote it: SAN, also with needless or false `+` and `#`, zeros in
 * castling, too much disambiguation, figurines, `e.p.`, or in long algebraic form. The result
 * carries the canonical SAN, so that a caller can compare the two. A move that names no legal
 * move, or more than one, is a `MoveFault` and changes nothing.
 */
export function playMove(position: Position, written: string): PlayedMove | MoveFault {
  const name = `${position.fen}|${written}`;
  const known = recent.get(name);
  if (known !== undefined) return known;
  const result = playFresh(position, written);
  recent.set(name, result);
  return result;
}

export function isMoveFault(result: PlayedMove | MoveFault): result is MoveFault {
  return 'kind' in result;
}

/** SAN that may be canonical: chess.js can be asked at once. */
const plainSan =
  /^(?:[KQRBN][a-h]?[1-8]?x?[a-h][1-8]|(?:[a-h]x)?[a-h][1-8](?:=[QRBN])?|O-O(?:-O)?)[+#]?$/;

function playFresh(position: Position, written: string): PlayedMove | MoveFault {
  if (plainSan.test(written)) {
    const played = playSan(position, written);
    if (played !== undefined) return played;
  }
  const spelling = readSpelling(written);
  const legal = listMoves(position);
  const fitting = spelling === undefined ? [] : legal.filter((move) => fits(spelling, move));
  const [only] = fitting;
  const played = only && fitting.length === 1 ? playSan(position, only.san) : undefined;
  return played ?? explainFault(position, written, spelling, legal);
}
