import { type CourseTable, tableLoaded, tableLoader } from '../contract/course-table.ts';
import { element } from './element.ts';

/** A page that was opened from a folder may load scripts but not fetch; so the table is a script. */
export function loadTable(onTable: (table: CourseTable) => void): void {
  const give = () => globalThis.courseTable && onTable(globalThis.courseTable);
  if (globalThis.courseTable !== undefined) {
    give();
    return;
  }
  addEventListener(tableLoaded, give, { once: true });
  document.head.append(element('script', { src: tableLoader }));
}
