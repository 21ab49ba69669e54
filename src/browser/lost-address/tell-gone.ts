import type { CourseTable } from '../../contract/course-table.ts';
import { readPositionAddress } from '../../contract/position-address.ts';
import { fill } from '../../contract/sentence.ts';
import type { ChapterWords } from '../../contract/words.ts';
import { positionOf } from '../../lookup/find.ts';
import { placeHref } from '../../lookup/place-href.ts';
import { element, makeButton } from '../element.ts';
import { loadTable } from '../load-table.ts';

/**
 * Says that this chapter lacks what the address names, and where else the course has it.
 * @param nearest what the board shows instead, in words.
 */
export function tellGone(
  id: string,
  nearest: string | undefined,
  words: ChapterWords['gone'],
): void {
  const said = nearest === undefined ? words.place : fill(words.position, { nearest });
  const lead = element('span', {}, said);
  const notice = element('p', { class: 'notice', role: 'status' }, lead, ' ');
  notice.append(makeButton(words.close, () => notice.remove()));
  document.body.append(notice);
  loadTable((table) => {
    const found = placeInCourse(table, id);
    if (found === undefined) return;
    const [before = '', after = ''] = words.elsewhere.split('{chapter}');
    lead.append(` ${before}`, element('a', { href: found.href }, found.title), after);
  });
}

/** The first place of a position, or of a name, in another chapter than this page's. */
function placeInCourse(
  table: CourseTable,
  id: string,
): { readonly href: string; readonly title: string } | undefined {
  const addressed = readPositionAddress(id);
  const index = addressed
    ? positionOf(table, addressed.key)
    : table.positions.findIndex(({ names }) => names?.includes(id));
  const place = index === undefined ? undefined : table.positions[index]?.at[0];
  if (index === undefined || place === undefined) return undefined;
  return { href: placeHref(table, index, place), title: table.chapters[place[0]]?.title ?? '' };
}
