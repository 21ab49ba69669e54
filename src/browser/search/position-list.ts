import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { element } from '../element.ts';
import { cappedList } from './capped-list.ts';
import { firstPlace, where } from './where.ts';

const shownAtOnce = 20;

/** Positions as links to where they stand, with what more there is to say of each. */
export function positionList(
  table: CourseTable,
  positions: readonly number[],
  words: SearchWords,
  sentence: (index: number, where: string) => string = (_, place) => place,
): Element[] {
  return cappedList(positions, shownAtOnce, words.more, (index) => {
    const { at = [], title: named } = table.positions[index] ?? {};
    const title = table.chapters[at[0]?.[0] ?? -1]?.title ?? '';
    return [
      element('a', { href: firstPlace(table, index) }, sentence(index, where(table, index, words))),
      ...(named === undefined ? [] : [' ', element('b', {}, named)]),
      ' ',
      element('span', { class: 'chapter' }, fill(words.inChapter, { chapter: title })),
    ];
  });
}
