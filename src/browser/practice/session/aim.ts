import { missedKey, type PracticeAim, readMissed } from '../../../contract/practice-address.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { lineText, pathsOf, positionOf } from '../../../lookup/index.ts';
import type { CourseItem, PracticeCourse } from './practice-course.ts';

/** What a session may ask, and its title. */
export interface Subject {
  /** A chapter's title, or the moves of a line; absent for the whole course. */
  readonly title?: string;
  readonly items: readonly CourseItem[];
  /** Where its lines begin, if possible. */
  readonly chapters: ReadonlySet<number>;
  /** Asks exactly these, whatever is due. */
  readonly exact?: boolean;
}

/** What an address asks for in this course; undefined for all of it, or for something unknown. */
export function subjectOf(
  course: PracticeCourse,
  aim: PracticeAim,
  words: PracticeWords,
): Subject | undefined {
  const { table, items } = course;
  const all = new Set(table.chapters.keys());
  if (aim.missed) return missedIn(course, all, words);
  const chapter = table.chapters.findIndex(({ page }) => page === `${aim.chapter}.html`);
  const from = aim.from === undefined ? undefined : positionOf(table, aim.from);
  if (chapter < 0 && from === undefined) return undefined;
  const chapters = chapter < 0 ? all : new Set([chapter]);
  const inChapter = chapter < 0 ? items : items.filter((item) => item.chapters.includes(chapter));
  if (from === undefined) {
    return { title: table.chapters[chapter]?.title ?? '', items: inChapter, chapters };
  }
  const behind = reached(course, from);
  return {
    title: lineText(pathsOf(table).to(from), words.letters) || words.start,
    items: inChapter.filter(({ position }) => behind.has(position)),
    chapters,
  };
}

/** The positions that the comparison left for this page. */
function missedIn(
  course: PracticeCourse,
  chapters: ReadonlySet<number>,
  { practice }: PracticeWords,
): Subject | undefined {
  let text: string | null;
  try {
    text = sessionStorage.getItem(missedKey(course.table.course));
  } catch {
    return undefined;
  }
  const items = readMissed(text).flatMap((key) => {
    const position = positionOf(course.table, key);
    return (position !== undefined && course.itemAt.get(position)) || [];
  });
  return { title: practice.missedInGames, items, chapters, exact: true };
}

/** All positions reachable from one by moves of the course, itself included. */
function reached({ table }: PracticeCourse, from: number): ReadonlySet<number> {
  const found = new Set([from]);
  // A set keeps its order, and grows while it is walked.
  for (const position of found) {
    for (const { to, kind } of table.positions[position]?.moves ?? []) {
      if (kind !== 'bad') found.add(to);
    }
  }
  return found;
}
