import type { Finding } from '../diagnostics/index.ts';
import type { Chapter, EngineMargins, Side } from '../model/index.ts';
import type { OwnChecks } from './own-checks.ts';
import { rules } from './rules.ts';
import { type Asked, answerQuestion, type CourseIndex, createCourseView } from './view/index.ts';

/** What was found in a chapter, and what it depends on beside the chapter itself. */
export interface CheckedChapter {
  readonly findings: readonly FindingOfRule[];
  readonly asked: readonly Asked[];
  /** Whether code of the course's own gave no answer in time: another run may find something else. */
  readonly unsure?: true;
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
  readonly own: OwnChecks;
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
  const late = about.own.late();
  const findings: FindingOfRule[] = [];
  for (const { id, always, inChapter } of rules) {
    if (!inChapter || (off.has(id) && !always)) continue;
    for (const finding of inChapter({ chapter, course: view }))
      findings.push({ rule: id, finding });
  }
  findings.push(...about.own.inChapter({ chapter, course: view }, off));
  return { findings, asked: asked(), ...(about.own.late() > late && { unsure: true }) };
}

/** Whether all that was asked of the course would be answered as it was. */
export function stillHolds(
  { asked, unsure }: Pick<CheckedChapter, 'asked' | 'unsure'>,
  index: CourseIndex,
): boolean {
  return (
    !unsure &&
    asked.every(([kind, about, print]) => answerQuestion(index, kind, about).print === print)
  );
}
