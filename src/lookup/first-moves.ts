import { initialPosition } from '../chess/initial.ts';
import type { PieceLetters } from '../chess/letters.ts';
import type { CourseTable } from '../contract/course-table.ts';
import { lineText } from './line-text.ts';
import type { PathMove } from './paths.ts';

/** How many moves of each side are enough for an example. */
const most = 2;

/** The first moves of a course, as what one may ask it: `1.d4 d5 2.c4 e6`; empty where none of its lines begins a game. */
export function firstMoves(table: CourseTable, letters: PieceLetters): string {
  const line: PathMove[] = [];
  // Not by `positionOf`: a page that has just come up need not index the whole course for this.
  let from = table.positions.findIndex(({ key }) => key === initialPosition.key);
  while (line.length < 2 * most) {
    const move = table.positions[from]?.moves.find(({ kind }) => kind !== 'bad');
    if (move === undefined) break;
    const ply = line.length;
    line.push({
      from,
      move,
      number: 1 + Math.floor(ply / 2),
      color: ply % 2 === 0 ? 'white' : 'black',
    });
    from = move.to;
  }
  return lineText(line, letters);
}
