import type { CourseTable } from '../contract/course-table.ts';

declare global {
  /** Set by the site's script with the table; absent on pages that do not load it. */
  var courseTable: CourseTable | undefined;
}

/** The table of the course that this page or worker was given. @throws if it loads none. */
export function givenTable(): CourseTable {
  const table = globalThis.courseTable;
  if (table === undefined) throw new Error('this page loads no table of the course');
  return table;
}
