import type { CourseTable } from '../../contract/course-table.ts';
import { fill } from '../../contract/sentence.ts';
import type { SearchWords } from '../../contract/words.ts';
import { element } from '../element.ts';
import { inLanguageOf } from '../in-language-of.ts';
import { cappedList } from './capped-list.ts';
import { smallBoard } from './small-board.ts';
import { firstPlace, where } from './where.ts';

const shownAtOnce = 20;

/** Positions as boards that lead to where they stand, with what more there is to say of each. */
export function positionList(
  table: CourseTable,
  positions: readonly number[],
  words: SearchWords,
  sentence: (index: number, where: string) => string = (_, place) => place,
): Element[] {
  const looks = { step: shownAtOnce, more: words.more, list: 'plates small', item: 'plate' };
  return cappedList(positions, looks, (index) => {
    const { key = '', at = [], title } = table.positions[index] ?? {};
    const chapter = table.chapters[at[0]?.[0] ?? -1]?.title ?? '';
    const said = sentence(index, where(table, index, words));
    const inChapter = fill(words.inChapter, { chapter });
    return [
      element(
        'a',
        { href: firstPlace(table, index) },
        smallBoard(table, key.replace(/ .*/, '')),
        element('b', title === undefined ? {} : inLanguageOf(table), title ?? said),
      ),
      element('p', {}, title === undefined ? inChapter : `${said} ${inChapter}`),
    ];
  });
}
