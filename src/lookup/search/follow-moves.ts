import type { MoveFault, PieceKind, PlayedMove, Position } from '../../chess/index.ts';
import { initialPosition } from '../../chess/initial.ts';
import { englishLetters as english, type PieceLetters } from '../../chess/letters.ts';
import { isMoveFault, playMove } from '../../chess/play.ts';
import type { CourseTable } from '../../contract/course-table.ts';
import type { WrittenMove } from '../../movetext/index.ts';
import { positionOf } from '../find.ts';

export interface FollowedMoves {
  readonly start: Position;
  /** The moves that can be played, up to the first that cannot. */
  readonly played: readonly PlayedMove[];
  /** How many of them lead to the last position that the course has; absent if it has none. */
  readonly knownPlies?: number;
  /** Index of that position. */
  readonly known?: number;
  /** The first move that cannot be played, as it is written, and where it stands in the text. */
  readonly stopped?: {
    readonly written: string;
    readonly start: number;
    readonly fault: MoveFault;
  };
}

/**
 * Plays moves in the piece letters of the course or in English ones, whichever goes further, and
 * looks up how far the course has them. A line that leaves the course and comes back is followed.
 */
export function followMoves(
  table: CourseTable,
  moves: readonly WrittenMove[],
  letters: PieceLetters,
  start: Position = initialPosition,
): FollowedMoves {
  const own = play(moves, start, letters);
  const others = own.stopped === undefined ? own : play(moves, start, english);
  const isForeign =
    own.stopped !== undefined && inEnglish(own.stopped.written, letters).includes(foreign);
  const goesFurther = others.played.length - own.played.length;
  const line = goesFurther > 0 || (goesFurther === 0 && isForeign) ? others : own;
  const positions = [start, ...line.played.map(({ after }) => after)];
  const knownPlies = positions.findLastIndex(({ key }) => positionOf(table, key) !== undefined);
  const known = positions[knownPlies];
  const index = known && positionOf(table, known.key);
  return { start, ...line, ...(index !== undefined && { knownPlies, known: index }) };
}

function play(
  moves: readonly WrittenMove[],
  start: Position,
  letters: PieceLetters,
): Pick<FollowedMoves, 'played' | 'stopped'> {
  const played: PlayedMove[] = [];
  for (const { san } of moves) {
    const result = playMove(played.at(-1)?.after ?? start, inEnglish(san.text, letters));
    if (isMoveFault(result)) {
      return { played, stopped: { written: san.text, start: san.span.start, fault: result } };
    }
    played.push(result);
  }
  return { played };
}

const foreign = 'Y';

/** Piece letters are the first of a move and what a pawn becomes; `O-O` has none. */
function inEnglish(written: string, letters: PieceLetters): string {
  if (letters === english || /^[O0o]/.test(written)) return written;
  return written.replace(/^\p{Lu}|(?<==|\(|[18])\p{Lu}/gu, (letter) => {
    const kind = (Object.keys(english) as PieceKind[]).find((name) => letters[name] === letter);
    if (kind !== undefined) return english[kind];
    // An English letter that the language does not have cannot be one of its moves: no piece is `Y`.
    return Object.values(english).includes(letter) ? foreign : letter;
  });
}
