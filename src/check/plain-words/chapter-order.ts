/** Words that tell where in the course something stands: “the next chapter”, “below”, “earlier in this course”. */
import type { Chapter } from '../../model/index.ts';
import { decodeAddress } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';
import type { Passage } from './passage.ts';
import { sentencesIn } from './sentences.ts';
import { type LinkInText, placeIn } from './text.ts';
import type { Vocabulary } from './vocabulary.ts';
import type { WordsScope } from './words-scope.ts';

export interface WrongOrder {
  /** Offsets in the passage's text. */
  readonly start: number;
  readonly end: number;
  readonly words: string;
  /** Where it stands, as an English clause. */
  readonly because: string;
}

/** Where the target of a link stands, as seen from the link. */
interface Target {
  /** Chapters from this one: 0 is this one, 1 the next. */
  readonly chapters: number;
  /** Within this chapter: whether it stands further down; absent where that is not known. */
  readonly isBelow?: boolean;
  readonly told: string;
}

export function wrongOrders(
  passage: Passage,
  { chapter, course, vocabulary }: WordsScope,
): WrongOrder[] {
  const wrong: WrongOrder[] = [];
  const { text, links } = passage.text;
  if (links.length === 0) return wrong;
  const { order, language } = vocabulary;
  let next = 0;
  for (const { start, text: sentence } of sentencesIn(passage.text, language)) {
    const end = start + sentence.length;
    const own: LinkInText[] = [];
    for (let link = links[next]; link && link.start < end; link = links[++next]) {
      if (link.start >= start && link.end <= end) own.push(link);
    }
    for (const link of own) {
      const said = [
        ['nextChapter', find(order.nextChapter, text, link.start, link.end)],
        ['previousChapter', find(order.previousChapter, text, link.start, link.end)],
        ['below', findBehind(order.below, text, link)],
        ['above', findBehind(order.above, text, link)],
        ...(own.length === 1
          ? ([
              ['laterHere', find(order.laterHere, text, start, end)],
              ['earlierHere', find(order.earlierHere, text, start, end)],
            ] as const)
          : []),
      ] as const;
      for (const [what, found] of said) {
        if (!found) continue;
        const target = targetOf(link, passage, { chapter, course });
        if (!target || fits(what, target)) continue;
        wrong.push({ ...found, because: target.told });
      }
    }
  }
  return wrong;
}

function fits(what: keyof Vocabulary['order'], { chapters, isBelow }: Target): boolean {
  switch (what) {
    case 'nextChapter':
      return chapters === 1;
    case 'previousChapter':
      return chapters === -1;
    case 'below':
    case 'laterHere':
      return chapters > 0 || (chapters === 0 && isBelow !== false);
    case 'above':
    case 'earlierHere':
      return chapters < 0 || (chapters === 0 && isBelow !== true);
  }
}

function targetOf(
  { node, start, end }: LinkInText,
  passage: Passage,
  { chapter, course }: { readonly chapter: Chapter; readonly course: CourseView },
): Target | undefined {
  const place =
    node.type === 'positionLink' ? course.ask('namePlace', node.label)?.place : undefined;
  const file = node.type === 'link' ? decodeAddress(node.url.replace(/[?#].*$/s, '')) : place?.file;
  if (file === undefined) return undefined;
  const there = course.ask('order', file);
  const here = course.ask('order', chapter.file);
  if (there < 0 || here < 0) return undefined;
  const told =
    file === chapter.file
      ? `what it links to stands in this chapter${place ? `, in line ${place.start.line}` : ''}`
      : `what it links to stands in ${file}`;
  if (file !== chapter.file || !place) return { chapters: there - here, told };
  const own = placeIn(passage.text, start, end);
  return { chapters: 0, isBelow: place.start.offset > own.start.offset, told };
}

function find(source: string, text: string, start: number, end: number) {
  const pattern = new RegExp(`(?<![\\p{L}])(?:${source})(?![\\p{L}])`, 'iu');
  const found = pattern.exec(text.slice(start, end));
  if (!found) return undefined;
  const at = start + found.index;
  return { start: at, end: at + found[0].length, words: found[0] };
}

/** Right behind a link, or its last words. */
function findBehind(source: string, text: string, link: LinkInText) {
  const behind = new RegExp(`^ ?(?:${source})(?![\\p{L}])`, 'iu').exec(text.slice(link.end));
  if (behind) {
    const words = behind[0].trimStart();
    const start = link.end + behind[0].length - words.length;
    return { start, end: start + words.length, words };
  }
  const last = new RegExp(`(?<![\\p{L}])(?:${source})$`, 'iu').exec(
    text.slice(link.start, link.end),
  );
  if (!last) return undefined;
  return { start: link.start + last.index, end: link.end, words: last[0] };
}
