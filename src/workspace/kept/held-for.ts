import type { ChapterSummary, CheckedChapter } from '../../check/index.ts';
import type { CourseFiles } from '../../read/index.ts';
import { hashOf, hashOfFile } from '../questions.ts';

/** Of summaries: a print of each. */
const prints = new WeakMap<ChapterSummary, string>();

export function printSummary(summary: ChapterSummary): string {
  const print = prints.get(summary) ?? hashOf(JSON.stringify(summary));
  prints.set(summary, print);
  return print;
}

/** Notes the print that an earlier process has made. */
export function knowPrint(summary: ChapterSummary, print: string): void {
  prints.set(summary, print);
}

/** A print of all that the course answers its chapters with: where it is equal, so is every answer. */
export function printAnswers(
  summaries: readonly ChapterSummary[],
  { facts = [], shelf }: Pick<CourseFiles, 'facts' | 'shelf'>,
): string {
  const around = typeof shelf === 'object' ? { ...shelf, courses: [...shelf.courses] } : shelf;
  return hashOf(JSON.stringify([facts.map(hashOfFile), around, summaries.map(printSummary)]));
}

const held = new WeakMap<CheckedChapter, string>();

/** Notes that what was found in a chapter holds in a course with these answers. */
export function holdFor(checked: CheckedChapter, answers: string): void {
  if (!checked.unsure) held.set(checked, answers);
}

/** The last answers for which it was known to hold. */
export function heldFor(checked: CheckedChapter): string | undefined {
  return held.get(checked);
}
