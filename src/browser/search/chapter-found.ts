import type { SearchWords } from '../../contract/words.ts';
import { counted } from '../counted.ts';
import { element } from '../element.ts';
import { type ChapterFound, excerptWords, type PartFound } from './word-index.ts';

/** So many parts of a chapter are shown. */
const partsShown = 4;

/** A chapter that has the words, and the parts of it that do, each with a link to the nearest place. */
export function chapterFound(found: ChapterFound, words: SearchWords): (Node | string)[] {
  const title = found.meta.title ?? found.raw_url;
  const parts = found.sub_results.slice(0, partsShown);
  const rest = found.sub_results.length - parts.length;
  const list = element('ul', { role: 'list' });
  for (const part of parts) {
    const href = `${found.raw_url}${nearest(found, part)}`;
    const link = element('a', { href }, part.title);
    list.append(element('li', {}, link, ' ', excerpt(part)));
  }
  if (rest > 0)
    list.append(element('li', { class: 'chapter' }, counted(words.moreInChapter, rest)));
  return [
    element('p', { class: 'found-chapter' }, element('a', { href: found.raw_url }, title)),
    list,
  ];
}

/**
 * The last move, board or heading before the words; the page scrolls there and shows it. Of all places
 * that have one of the words it is where most stand together, as in the excerpt.
 */
function nearest({ anchors }: ChapterFound, { locations }: PartFound): string {
  const together = (start: number) =>
    locations.filter((at) => at >= start && at < start + excerptWords).length;
  const best = locations.reduce(
    (found, start) => (together(start) > together(found) ? start : found),
    locations[0] ?? 0,
  );
  const before = anchors.findLast(({ location }) => location <= best);
  return before === undefined ? '' : `#${encodeURIComponent(before.id)}`;
}

/** Of the excerpt's HTML only text and marks are taken over. */
function excerpt({ excerpt }: PartFound): HTMLElement {
  const template = element('template');
  template.innerHTML = excerpt;
  const nodes = [...template.content.childNodes].map((node) =>
    node instanceof HTMLElement && node.tagName === 'MARK'
      ? element('mark', {}, node.textContent)
      : (node.textContent ?? ''),
  );
  return element('span', { class: 'excerpt' }, ...nodes);
}
