import { type Diagnostic, makeDiagnostic, sortDiagnostics } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';
import { applyAllowances, findAllowances } from './allowances.ts';
import { type CheckedCourse, sealCourse } from './checked-course.ts';
import { allowUnused, describeUnused } from './rules/allow-unused.ts';
import { rules } from './rules.ts';

export interface CheckResult {
  /** All findings, in the order of the text. */
  readonly diagnostics: readonly Diagnostic[];
  /** Absent if a finding is an error: such a course is not published. */
  readonly checked?: CheckedCourse;
}

/** Runs all rules over a course, each with the severity that the course gives it. */
export function checkCourse(course: Course): CheckResult {
  const found: Diagnostic[] = [];
  for (const rule of rules) {
    const setting = rule.always ? undefined : course.settings.rules[rule.id];
    if (setting === 'off') continue;
    for (const finding of rule.find(course)) {
      found.push(makeDiagnostic(rule, setting ?? rule.severity, finding));
    }
  }
  const always = new Set(rules.filter((rule) => rule.always).map(({ id }) => id));
  const { told, unused } = applyAllowances(found, findAllowances(course), always);
  const sorted = sortDiagnostics([
    ...told,
    ...unused.map((allowance) =>
      makeDiagnostic(allowUnused, allowUnused.severity, describeUnused(allowance, rules)),
    ),
  ]);
  return sorted.some(({ severity }) => severity === 'error')
    ? { diagnostics: sorted }
    : { diagnostics: sorted, checked: sealCourse(course) };
}
