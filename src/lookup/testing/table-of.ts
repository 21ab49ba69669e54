import type { CourseTable } from '../../contract/course-table.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { assignAddresses } from '../../render/addresses.ts';
import { makeCourseTable } from '../../site/render/course-table.ts';

/** The table of a course of one chapter: moves from the start, then perhaps some from a FEN. */
export function tableOf(moves: string, fen?: string, later?: string): CourseTable {
  const blocks = [`\`\`\`moves\n${moves}\n\`\`\`\n`];
  if (fen !== undefined) blocks.push(`\`\`\`moves fen="${fen}"\n${later}\n\`\`\`\n`);
  const course = courseOf(blocks.join('\n'), 'black');
  return makeCourseTable(course, assignAddresses(course));
}
