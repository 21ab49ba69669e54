import { idOfName } from '../../addresses/index.ts';
import { type Course, courseId, firstNames, type Side, walkText } from '../../model/index.ts';
import { isPageFile, type NameOnShelf, type NewsSyntax } from '../../read/index.ts';
import type { Allowance } from '../allowances.ts';
import { type ChapterSummary, type CompactPlace, siblingAsked } from '../chapter-summary.ts';
import { isAdvised } from '../view/asides.ts';
import type { CourseIndex } from '../view/index.ts';
import { positionsBefore } from './positions-before.ts';

/**
 * What the other courses of a shelf may know of a course: plain data and little of it, so that a shelf is checked
 * with one course in memory after the other. Drafts have no part in it: they are not published.
 */
export interface CourseEntry {
  readonly id: string;
  readonly title: string;
  readonly side: Side;
  /** Its named positions, by their names. */
  readonly names: Readonly<Record<string, NameOnShelf>>;
  /** What it links to in other courses, as `course/label`, also in its drafts. */
  readonly links: readonly string[];
  /** What it sets of the rules of a shelf. */
  readonly levels: Course['settings']['rules'];
  readonly advice: readonly AdviceOfCourse[];
  /** The exceptions that it makes from rules of a shelf. */
  readonly allowances: readonly Allowance[];
}

/** The advice in a position: its key, the move in SAN, its name such as `7...Be7`, where it is given. */
export type AdviceOfCourse = readonly [
  key: string,
  san: string,
  name: string,
  file: string,
  at: CompactPlace,
];

export interface EntrySource {
  readonly settings: Course['settings'];
  /** Of its chapters and pages. */
  readonly summaries: readonly ChapterSummary[];
  readonly index: CourseIndex;
  readonly news: readonly Pick<NewsSyntax, 'body'>[];
  /** The files that are drafts. */
  readonly drafts: ReadonlySet<string>;
}

/** @param ofShelf the ids of the rules of a shelf. */
export function makeCourseEntry(source: EntrySource, ofShelf: ReadonlySet<string>): CourseEntry {
  const { settings, summaries, drafts } = source;
  const published = summaries.filter(({ file }) => !drafts.has(file));
  const levels = Object.entries(settings.rules).filter(([rule]) => ofShelf.has(rule));
  return {
    id: courseId({ settings }),
    title: settings.title,
    side: settings.side,
    names: namesIn(published),
    links: linksOf(source),
    levels: Object.fromEntries(levels),
    advice: settings.side === 'both' ? [] : adviceIn(source),
    allowances: published.flatMap(({ allowances }) =>
      allowances.filter(({ rule }) => ofShelf.has(rule)),
    ),
  };
}

/** What a course links to in others, as `course/label`. */
export function linksOf({ summaries, news }: Pick<EntrySource, 'summaries' | 'news'>): string[] {
  const links = new Set(summaries.flatMap(({ siblings = [] }) => siblings));
  for (const { body } of news) {
    walkText(body.children, (node) => {
      if (node.type === 'courseLink') links.add(siblingAsked(node));
    });
  }
  return [...links];
}

function namesIn(summaries: readonly ChapterSummary[]): CourseEntry['names'] {
  const ids = new Map(summaries.map(({ file, id }) => [file, id]));
  // No prototype: names come from the author's text.
  const names: Record<string, NameOnShelf> = Object.create(null);
  for (const { name, title, ref } of firstNames(summaries).values()) {
    if (ref === undefined) continue;
    const page = encodeURIComponent(ids.get(ref.chapter) ?? 'index');
    names[name] = {
      address: `${page}.html#${encodeURIComponent(idOfName(name))}`,
      ...(title !== undefined && { title }),
    };
  }
  return names;
}

/** The advice of a course in each position, where it is first given; what comes before its subject is left out. */
function adviceIn({ index, settings, drafts }: EntrySource): AdviceOfCourse[] {
  const before = positionsBefore(index, settings.begins);
  return [...index.positions].flatMap(([key, { from }]): AdviceOfCourse[] => {
    if (before.has(key)) return [];
    const first = from.find(
      (move) => !drafts.has(move.chapter) && !isPageFile(move.chapter) && isAdvised(index, move),
    );
    if (first?.node.san === undefined) return [];
    const { node, chapter } = first;
    return [[key, first.node.san, node.name, chapter, node.at]];
  });
}
