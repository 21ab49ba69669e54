import { Scanner } from '../scan/scanner.ts';
import type { Movetext } from '../types.ts';
import { parseGame } from './parse-game.ts';

/**
 * Reads one game or line of movetext: the PGN standard's import format (sections 5, 6 and 8), with
 * the printed assessment signs and the spellings of moves that authors bring along. Never throws:
 * what cannot be read is in `problems`, in the order of the text, and all the rest in the tree.
 * Places are offsets in UTF-16 units into `text`.
 *
 * After a result only comments are read on; a variation without a move gives its comments to the
 * line around it. A comment between a number and its move belongs to the move before.
 */
export function parseMovetext(text: string): Movetext {
  return parseGame(text, new Scanner(text));
}
