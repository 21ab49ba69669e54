import type { CourseTable } from '../../contract/course-table.ts';
import type { SearchWords } from '../../contract/words.ts';
import { pageHref } from '../../lookup/index.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import { inLanguageOf } from '../in-language-of.ts';
import { placementAt, smallBoard } from './small-board.ts';
import { type ChapterFound, excerptWords, type PartFound } from './word-index.ts';

/** So many parts of a chapter are shown. */
const partsShown = 4;

/**
 * A chapter that has the words, and the parts of it that do, each with the board at the nearest place and a
 * link there. What stands below the chapter's own heading has no heading of its own.
 */
export function chapterFound(
  found: ChapterFound,
  table: CourseTable,
  words: SearchWords,
): (Node | string)[] {
  const title = found.meta.title ?? found.raw_url;
  const parts = found.sub_results.slice(0, partsShown);
  const rest = found.sub_results.length - parts.length;
  const list = element('ul', { role: 'list' });
  for (const part of parts) list.append(partFound(found, part, title, table));
  if (rest > 0)
    list.append(element('li', { class: 'chapter' }, counted(words.moreInChapter, rest)));
  return [
    element(
      'p',
      { class: 'found-chapter' },
      element('a', { href: pageHref(table, found.raw_url), ...inLanguageOf(table) }, title),
    ),
    list,
  ];
}

function partFound(
  found: ChapterFound,
  part: PartFound,
  title: string,
  table: CourseTable,
): HTMLElement {
  const { link, placement } = bestPlace(found, part, table);
  const href = pageHref(table, found.raw_url + link);
  const told = element('div');
  if (part.title === title)
    told.append(element('a', { href, class: 'excerpt-link' }, excerpt(part, table)));
  else
    told.append(
      element('a', { href, ...inLanguageOf(table) }, part.title),
      ' ',
      excerpt(part, table),
    );
  const item = element('li', { class: 'found-part' });
  if (placement !== undefined) item.append(smallBoard(table, placement));
  item.append(told);
  return item;
}

/**
 * The last move, board or heading before the words; the page scrolls there and shows it. Of all places
 * that have one of the words it is where most stand together, as in the excerpt. The board is that of the last
 * position before, within the part, else of the first behind.
 */
function bestPlace({ anchors, sub_results }: ChapterFound, part: PartFound, table: CourseTable) {
  const { locations } = part;
  const together = (start: number) =>
    locations.filter((at) => at >= start && at < start + excerptWords).length;
  const best = locations.reduce(
    (found, start) => (together(start) > together(found) ? start : found),
    locations[0] ?? 0,
  );
  const before = anchors.findLast(({ location }) => location <= best);
  const begin = part.anchor?.location ?? 0;
  const end = Math.min(
    ...sub_results.flatMap(({ anchor }) =>
      anchor !== undefined && anchor.location > begin ? [anchor.location] : [],
    ),
  );
  const within = anchors.filter(({ location }) => location >= begin && location < end);
  const shown =
    within.findLast(({ id, location }) => location <= best && placementAt(table, id)) ??
    within.find(({ id, location }) => location > best && placementAt(table, id));
  return {
    link: before === undefined ? '' : `#${encodeURIComponent(before.id)}`,
    placement: shown && placementAt(table, shown.id),
  };
}

/** Of the excerpt's HTML only text and marks are taken over. */
function excerpt({ excerpt }: PartFound, table: CourseTable): HTMLElement {
  const template = element('template');
  template.innerHTML = excerpt;
  const nodes = [...template.content.childNodes].map((node) =>
    node instanceof HTMLElement && node.tagName === 'MARK'
      ? element('mark', {}, node.textContent)
      : (node.textContent ?? ''),
  );
  return element('span', { class: 'excerpt', ...inLanguageOf(table) }, ...nodes);
}
