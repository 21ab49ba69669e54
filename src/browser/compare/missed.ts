import type { CourseTable } from '../../contract/course-table.ts';
import { missedKey, missedSession, writeMissed } from '../../contract/practice-address.ts';
import type { PositionRow } from '../../lookup/games/by-position.ts';
import { pageHref } from '../../lookup/place-href.ts';
import { element, make } from '../element.ts';
import type { Speech } from './compare-words.ts';

/** Rows of one chapter, in the order of the rows; of a position that stands in several the first counts. */
export interface RowsOfChapter {
  readonly title: string;
  readonly page: string;
  readonly rows: readonly PositionRow[];
}

export function byChapter(rows: readonly PositionRow[], table: CourseTable): RowsOfChapter[] {
  return table.chapters.flatMap(({ title, page }, index) => {
    const own = rows.filter(({ position }) => table.positions[position]?.at[0]?.[0] === index);
    return own.length === 0 ? [] : [{ title, page, rows: own }];
  });
}

/** Leads to a session of practice about the positions that were missed. */
export function practiseMissed(
  rows: readonly PositionRow[],
  table: CourseTable,
  { words, counted }: Speech,
): HTMLElement {
  const keys = new Set(rows.flatMap(({ position }) => table.positions[position]?.key ?? []));
  const link = element('a', { class: 'act', href: pageHref(table, missedSession) }, words.practise);
  link.addEventListener('click', () => {
    try {
      sessionStorage.setItem(missedKey(table.course), writeMissed(keys));
    } catch {
      // Practice then says that it has been given nothing.
    }
  });
  return make(
    'p',
    'practise-missed',
    link,
    ' ',
    make('span', 'hint', counted(words.practiseCount, keys.size)),
  );
}
