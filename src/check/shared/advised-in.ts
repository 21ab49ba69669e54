import { adviceIn, type MovesBlock } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';

const none: ReadonlySet<number> = new Set();

/** The nodes of a block that are the course's advice, by index. */
export function advisedIn(block: MovesBlock, course: CourseView): ReadonlySet<number> {
  if (course.side === 'both') return none;
  return block.from && course.ask('aside', block.from.name) ? none : adviceIn(block, course.side);
}
