import type { CheckedCourse } from '../check/index.ts';
import type { Course } from '../model/index.ts';
import { type Edition, makeEdition } from './edition.ts';
import { findAdviceChanges, findJudgedChanges } from './find-advice-changes.ts';
import { findExerciseChanges } from './find-exercise-changes.ts';
import { findGrowth, type Growth } from './find-growth.ts';
import { chapterOf, describeFall, describeGrowth } from './find-line-changes.ts';
import { findPatternChanges } from './find-pattern-changes.ts';
import {
  type AssessmentChange,
  type Change,
  type ChapterChanges,
  type CourseChanges,
  changeKinds,
} from './types.ts';

/**
 * What changed for a student between two editions of a course. Positions are compared, not texts:
 * words, the names of chapters and lines that moved to another place are no change.
 */
export function compareCourses(before: Course, { course }: CheckedCourse): CourseChanges {
  const old = makeEdition(before, false);
  const now = makeEdition(course, true);
  const grown = joinAtEnds(findGrowth(now, old), old);
  const fallen = joinAtEnds(findGrowth(old, now), now);
  const advice = findAdviceChanges(old, now);
  const oldOnly = unknownChapters(old, now);

  // What hangs on a changed advice is told with it, not a second time.
  const isTold = (side: 'old' | 'new', { from }: Growth) =>
    advice.some(({ key, change }) => from?.key === key && change[side]?.san === from.san);
  const behind = (key: string, san: string | undefined) =>
    grown.find(({ from }) => from?.key === key && from.san === san)?.positions ?? 0;

  const changes: Change[] = [
    ...advice.map(({ key, change }) => ({ ...change, positions: behind(key, change.new?.san) })),
    ...grown.filter((part) => !isTold('new', part)).map((part) => describeGrowth(part, old, now)),
    ...findJudgedChanges(old, now).map(({ change }) => change),
    ...findAssessmentChanges(old, now),
    // A dropped chapter is told as a whole.
    ...fallen
      .filter((part) => !isTold('old', part) && !oldOnly.has(chapterOf(old, part.ref)))
      .map((part) => describeFall(part, old, now)),
    ...findExerciseChanges(old, now),
    ...findPatternChanges(old, now),
  ].filter(({ at }) => at.stands || !oldOnly.has(at.chapter));

  const { side } = course.settings;
  const { side: sideBefore } = before.settings;
  return {
    ...(side !== sideBefore && { side: { old: sideBefore, new: side } }),
    chapters: [
      ...chaptersOf(now, changes, unknownChapters(now, old), grown, 'new'),
      // What fell with nothing left to point to stands under the new chapter of the same id, if any.
      ...chaptersOf(old, changes, oldOnly, fallen, 'dropped').filter(
        ({ id }) => !course.chapters.some((kept) => kept.id === id),
      ),
    ],
  };
}

function findAssessmentChanges(old: Edition, now: Edition): AssessmentChange[] {
  return Object.keys(now.graph).flatMap((key): AssessmentChange[] => {
    const before = old.assessment(key);
    const after = now.assessment(key);
    const at = now.placeAt(key);
    if (before === undefined || after === undefined || before === after || !at) return [];
    return [{ kind: 'assessment', at, old: before, new: after }];
  });
}

/** Where the other edition ends, all that goes on from there is one line that became longer. */
function joinAtEnds(parts: readonly Growth[], other: Edition): Growth[] {
  const ends = new Map<string, Growth>();
  return parts.flatMap((part) => {
    const key = part.from?.key;
    if (key === undefined || other.graph[key]?.moves.length !== 0) return [part];
    if (ends.has(key)) return [];
    const same = parts.filter(({ from }) => from?.key === key);
    const joined = { ...part, positions: same.reduce((sum, { positions }) => sum + positions, 0) };
    ends.set(key, joined);
    return [joined];
  });
}

/** Chapters of an edition whose id, and most of whose positions, the other has not. */
function unknownChapters({ course }: Edition, other: Edition): ReadonlySet<string> {
  const ids = new Set(other.course.chapters.map(({ id }) => id));
  const unknown = course.chapters.filter(({ id, blocks }) => {
    const keys = blocks
      .flatMap(({ kind, nodes }) => (kind === 'moves' ? nodes : []))
      .flatMap(({ position }) => position?.key ?? []);
    const known = keys.filter((key) => other.graph[key]).length;
    return !ids.has(id) && keys.length > 0 && known * 2 < keys.length;
  });
  return new Set(unknown.map(({ id }) => id));
}

function chaptersOf(
  edition: Edition,
  changes: readonly Change[],
  unknown: ReadonlySet<string>,
  parts: readonly Growth[],
  status: 'new' | 'dropped',
): ChapterChanges[] {
  return edition.course.chapters.flatMap(({ id, title }): ChapterChanges[] => {
    const own = changes
      .filter(({ at }) => at.chapter === id)
      .filter(({ at }) => status === 'new' || !at.stands)
      .sort((a, b) => changeKinds.indexOf(a.kind) - changeKinds.indexOf(b.kind));
    const isUnknown = unknown.has(id);
    const positions = parts
      .filter(({ ref }) => isUnknown && chapterOf(edition, ref) === id)
      .reduce((sum, part) => sum + part.positions, 0);
    if (own.length === 0 && positions === 0) return [];
    return [{ id, title, status: isUnknown ? status : 'kept', positions, changes: own }];
  });
}
