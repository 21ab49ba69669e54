import type { CourseTable, TablePlace } from '../contract/course-table.ts';
import { positionAddress } from '../contract/position-address.ts';

/** How the table writes a place that shows the position with a key. */
export function tablePlace(chapter: number, id: string, key: string): TablePlace {
  const plain = positionAddress(key);
  if (id === plain) return [chapter];
  return [chapter, id.startsWith(`${plain}.`) ? id.slice(plain.length) : id];
}

/** The address of a place, as seen from a page that is no chapter. `position` is the index of what it shows. */
export function placeHref(
  table: CourseTable,
  position: number,
  [chapter, id = '']: TablePlace,
): string {
  const { chapters, positions } = table;
  const plain = positionAddress(positions[position]?.key ?? '');
  const whole = id === '' || id.startsWith('.') ? plain + id : id;
  return pageHref(table, `${chapters[chapter]?.page ?? 'index.html'}#${encodeURIComponent(whole)}`);
}

/** The address of a page of the course, as seen from where its table was loaded. */
export function pageHref({ at = '' }: CourseTable, page: string): string {
  return at + page;
}
