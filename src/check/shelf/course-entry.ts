import { type Course, courseId, type Side } from '../../model/index.ts';
import type { Allowance } from '../allowances.ts';
import type { ChapterSummary, CompactPlace } from '../chapter-summary.ts';
import { isAdvised } from '../view/asides.ts';
import type { CourseIndex } from '../view/index.ts';
import { positionsBefore } from './positions-before.ts';

/**
 * What the other courses of a shelf may know of a course: plain data and little of it, so that a shelf is checked
 * with one course in memory after the other.
 */
export interface CourseEntry {
  readonly id: string;
  readonly title: string;
  readonly side: Side;
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
  readonly summaries: readonly ChapterSummary[];
  readonly index: CourseIndex;
}

/** @param ofShelf the ids of the rules of a shelf. */
export function makeCourseEntry(
  { settings, summaries, index }: EntrySource,
  ofShelf: ReadonlySet<string>,
): CourseEntry {
  const levels = Object.entries(settings.rules).filter(([rule]) => ofShelf.has(rule));
  return {
    id: courseId({ settings }),
    title: settings.title,
    side: settings.side,
    levels: Object.fromEntries(levels),
    advice: settings.side === 'both' ? [] : adviceIn(index, settings.begins),
    allowances: summaries.flatMap(({ allowances }) =>
      allowances.filter(({ rule }) => ofShelf.has(rule)),
    ),
  };
}

/** The advice of a course in each position, where it is first given; what comes before its subject is left out. */
function adviceIn(index: CourseIndex, begins: string | undefined): AdviceOfCourse[] {
  const before = positionsBefore(index, begins);
  return [...index.from].flatMap(([key, moves]): AdviceOfCourse[] => {
    if (before.has(key)) return [];
    const first = moves.find((move) => isAdvised(index, move));
    if (first?.node.san === undefined) return [];
    const { node, chapter } = first;
    return [[key, first.node.san, node.name, chapter, node.at]];
  });
}
