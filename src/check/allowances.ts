import type { Diagnostic, Place } from '../diagnostics/index.ts';
import { type Course, placeOfNode } from '../model/index.ts';
import { walkTexts } from './walk-course.ts';

/** `:allow[rule reason]`: findings of that rule which begin on its line are not told. */
export interface Allowance {
  readonly rule: string;
  readonly place: Place;
}

export function findAllowances(course: Course): Allowance[] {
  const allowances: Allowance[] = [];
  walkTexts(course, (node, chapter) => {
    if (node.type !== 'courseDirective' || node.name !== 'allow') return;
    const [rule = ''] = node.argument.split(' ');
    allowances.push({ rule, place: placeOfNode(node, chapter.file) });
  });
  return allowances;
}

/**
 * The findings that no allowance covers, and the allowances that cover none. Rules in `always`
 * cannot be excepted.
 */
export function applyAllowances(
  diagnostics: readonly Diagnostic[],
  allowances: readonly Allowance[],
  always: ReadonlySet<string>,
): { told: Diagnostic[]; unused: Allowance[] } {
  if (allowances.length === 0) return { told: [...diagnostics], unused: [] };
  const used = new Set<Allowance>();
  const told = diagnostics.filter(({ rule, place }) => {
    const covering = allowances.filter(
      (allowance) =>
        allowance.rule === rule &&
        !always.has(rule) &&
        allowance.place.file === place.file &&
        allowance.place.start.line === place.start.line,
    );
    for (const allowance of covering) used.add(allowance);
    return covering.length === 0;
  });
  return { told, unused: allowances.filter((allowance) => !used.has(allowance)) };
}
