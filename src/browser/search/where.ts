import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { moveText, pageHref, pathsOf, placeHref } from '../../lookup/index.ts';

/** A position in words: `after 7...Be7`. */
export function where(table: CourseTable, position: number, words: SearchWords): string {
  const last = pathsOf(table).last(position);
  return last === undefined
    ? words.start
    : fill(words.after, { move: moveText(last, words.letters) });
}

export function firstPlace(table: CourseTable, position: number): string {
  const [place] = table.positions[position]?.at ?? [];
  return place === undefined ? pageHref(table, 'index.html') : placeHref(table, position, place);
}
