import { type Position, readBoard, squares } from '../../src/chess/index.ts';
import type { Arrow } from '../../src/model/index.ts';
import type { CourseInMemory } from './course-in-memory.ts';
import { type FaultKind, replace } from './faults.ts';

export const slipsOfArrows: readonly FaultKind[] = [
  {
    name: 'an arrow from an empty square',
    rules: ['arrow-false'],
    *plant(course) {
      for (const { arrow, position, ends } of arrowsOf(course)) {
        const board = readBoard(position);
        const empty = squares.filter((square) => !board.has(square) && !ends.has(square));
        const from = empty[arrow.place.start.line % empty.length];
        if (from === undefined) continue;
        const text = `${from}-${arrow.to}`;
        yield replace(course, arrow.place, text, `${arrow.meaning} ${text}`, true);
      }
    },
  },
  {
    name: 'an arrow with its end one file aside',
    rules: ['arrow-false'],
    limit: 'the piece may cover the neighbouring square too, and a plan may lead almost anywhere',
    *plant(course) {
      for (const { arrow } of arrowsOf(course)) {
        const aside = `${'bcdefghg'['abcdefgh'.indexOf(arrow.to[0] ?? '')]}${arrow.to[1]}`;
        if (aside === arrow.from) continue;
        const text = `${arrow.from}-${aside}`;
        yield replace(course, arrow.place, text, `${arrow.meaning} ${text}`, false);
      }
    },
  },
];

/** Every arrow of a comment or a diagram, its board, and where the arrows of that board end. */
function* arrowsOf({ course }: CourseInMemory) {
  for (const block of course.chapters.flatMap(({ blocks }) => blocks)) {
    const boards: { position?: Position; arrows: readonly Arrow[] }[] = [...block.nodes];
    if (block.kind === 'diagram') boards.push(block);
    for (const { position, arrows } of boards) {
      const ends = new Set(arrows.map(({ to }) => to));
      if (position) for (const arrow of arrows) yield { arrow, position, ends };
    }
  }
}
