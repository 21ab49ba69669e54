import * as z from 'zod/mini';
import { parseJson } from '../../../contract/parse-json.ts';
import { keptText } from '../../kept-text.ts';
import type { PracticeCourse } from './practice-course.ts';

/** A chapter without a tick: its page, and positions by which it is known under another name. */
const leftOut = z.array(z.object({ page: z.string(), keys: z.array(z.string()) }));
type LeftOut = z.output<typeof leftOut>[number];

/** Positions by which a chapter is recognised. */
const keptKeys = 12;

/** The chapters that are practised: all but those that the reader has unticked. */
export function chosenChapters(course: PracticeCourse): ReadonlySet<number> {
  const left = new Set(recall(course).map((entry) => chapterOf(entry, course)));
  return new Set([...course.table.chapters.keys()].filter((index) => !left.has(index)));
}

/** Remembers them; a chapter missing from this edition stays unticked for the next. */
export function rememberChapters(course: PracticeCourse, chosen: ReadonlySet<number>): void {
  const gone = recall(course).filter((entry) => chapterOf(entry, course) === undefined);
  const left = course.table.chapters.flatMap(({ page }, index): LeftOut[] =>
    chosen.has(index) ? [] : [{ page, keys: keysOf(course, index).slice(-keptKeys) }],
  );
  try {
    localStorage.setItem(name(course), JSON.stringify([...gone, ...left]));
  } catch {
    // A convenience: without storage all chapters have a tick next time.
  }
}

/** The chapter with most of the positions, and half of them at least; else that of the page. */
function chapterOf({ page, keys }: LeftOut, course: PracticeCourse): number | undefined {
  const { chapters } = course.table;
  const shared = chapters.map((_, index) => {
    const own = new Set(keysOf(course, index));
    return keys.filter((key) => own.has(key)).length;
  });
  const most = Math.max(...shared);
  if (most > 0 && most >= keys.length / 2) return shared.indexOf(most);
  const same = chapters.findIndex((chapter) => chapter.page === page);
  return same < 0 ? undefined : same;
}

/** Positions that only this chapter asks, the deepest last. */
function keysOf({ items }: PracticeCourse, chapter: number): string[] {
  return items
    .filter(({ chapters }) => chapters.length === 1 && chapters[0] === chapter)
    .map(({ key }) => key);
}

function recall(course: PracticeCourse): readonly LeftOut[] {
  const text = keptText(name(course)) ?? '';
  // Editions before this one kept the pages alone.
  if (!text.startsWith('[')) {
    return text.split(' ').flatMap((page) => (page === '' ? [] : [{ page, keys: [] }]));
  }
  return leftOut.safeParse(parseJson(text)).data ?? [];
}

function name({ table }: PracticeCourse): string {
  return `practice:${table.course}:left-out`;
}
