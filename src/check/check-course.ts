import { type Diagnostic, makeDiagnostic, sortDiagnostics } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';
import { type CheckedCourse, sealCourse } from './checked-course.ts';
import { rules } from './rules.ts';

export interface CheckResult {
  /** All findings, in the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
  /** Absent if a finding is an error: such a course is not published. */
  readonly checked?: CheckedCourse;
}

/** Runs all rules over a course, each with the severity that the course gives it. */
export function checkCourse(course: Course): CheckResult {
  const diagnostics: Diagnostic[] = [];
  for (const rule of rules) {
    const setting = rule.always ? undefined : course.settings.rules[rule.id];
    if (setting === 'off') continue;
    for (const finding of rule.find(course)) {
      diagnostics.push(makeDiagnostic(rule, setting ?? rule.severity, finding));
    }
  }
  const sorted = sortDiagnostics(diagnostics);
  return sorted.some(({ severity }) => severity === 'error')
    ? { diagnostics: sorted }
    : { diagnostics: sorted, checked: sealCourse(course) };
}
