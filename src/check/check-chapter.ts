import type { Finding } from '../diagnostics/index.ts';
import type { Chapter, EngineMargins, Side } from '../model/index.ts';
import { rules } from './rules.ts';
import { type Asked, answerQuestion, type CourseIndex, createCourseView } from './view/index.ts';

/** What was found in a chapter, and what it depends on beside the chapter itself. */
export interface CheckedChapter {
  readonly findings: readonly FindingOfRule[];
  readonly asked: readonly Asked[];
}

export interface FindingOfRule {
  readonly rule: string;
  readonly finding: Finding;
}

export interface CheckOptions {
  readonly side: Side;
  readonly margins: EngineMargins;
  /** The course's language, as BCP 47. */
  readonly language: string;
  /** Rules that are switched off for the course. */
  readonly off: ReadonlySet<string>;
}

/** Runs all rules over one chapter of a course. */
export function checkChapter(
  chapter: Chapter,
  index: CourseIndex,
  { off, ...about }: CheckOptions,
): CheckedChapter {
  const { view, asked } = createCourseView(index, about);
  const findings: FindingOfRule[] = [];
  for (const { id, always, inChapter } of rules) {
    if (!inChapter || (off.has(id) && !always)) continue;
    for (const finding of inChapter({ chapter, course: view }))
      findings.push({ rule: id, finding });
  }
  return { findings, asked: asked() };
}

/** Whether all that was asked of the course would be answered as it was. */
export function stillHolds({ asked }: Pick<CheckedChapter, 'asked'>, index: CourseIndex): boolean {
  return asked.every(([kind, about, print]) => answerQuestion(index, kind, about).print === print);
}
