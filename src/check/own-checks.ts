import type { Rule } from '../diagnostics/index.ts';
import type { CourseSettings } from '../model/index.ts';
import type { ChapterSummary } from './chapter-summary.ts';
import type { FindingOfRule } from './check-chapter.ts';
import type { ClaimKind } from './claims/index.ts';
import type { ChapterScope, CourseScope } from './course-rule.ts';

/** What the check knows of a rule of the course's own. */
export type OwnRule = Pick<Rule, 'id' | 'severity' | 'finds'>;

/**
 * Rules and claims of the course's own. The check knows nothing of how they are run: whatever their code does, the
 * answers here are findings, those of `own-rule` among them.
 */
export interface OwnChecks {
  readonly rules: readonly OwnRule[];
  readonly claims: readonly ClaimKind[];
  /** Whether `course.yaml` names code that nobody runs here: then rules and claims that nobody knows are let pass. */
  readonly leftOut: boolean;
  /** Equal where what is found with them is equal: a print of their code. */
  readonly print: string;
  /** How many answers were not had in time so far: what was found meanwhile is not kept. */
  readonly late: () => number;
  readonly inChapter: (scope: ChapterScope, off: ReadonlySet<string>) => readonly FindingOfRule[];
  readonly inCourse: (
    chapters: readonly ChapterSummary[],
    scope: CourseScope,
    off: ReadonlySet<string>,
  ) => readonly FindingOfRule[];
}

const none: OwnChecks = {
  rules: [],
  claims: [],
  leftOut: false,
  print: '',
  late: () => 0,
  inChapter: () => [],
  inCourse: () => [],
};

/** Of a course whose own rules nobody runs, or that has none. */
export function withoutOwnChecks({ ownRules }: Pick<CourseSettings, 'ownRules'>): OwnChecks {
  return ownRules.length === 0
    ? none
    : { ...none, leftOut: true, print: `without ${ownRules.join(' ')}` };
}
