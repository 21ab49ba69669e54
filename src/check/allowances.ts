import { type Diagnostic, type Place, pointBehind } from '../diagnostics/index.ts';
import { type Chapter, placeOfNode, textNodes } from '../model/index.ts';

/** `:allow[rule reason]`: findings of that rule which begin on its line are not told. */
export interface Allowance {
  readonly rule: string;
  readonly place: Place;
  /** The rule's id. */
  readonly rulePlace: Place;
}

export function findAllowances(chapter: Chapter): Allowance[] {
  const allowances: Allowance[] = [];
  for (const node of textNodes(chapter, 'courseDirective')) {
    if (node.name !== 'allow') continue;
    const [rule = ''] = node.argument.split(' ');
    const { start } = node.argumentRange;
    const { file } = chapter;
    const end = pointBehind(start, rule.length);
    allowances.push({ rule, place: placeOfNode(node, file), rulePlace: { file, start, end } });
  }
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
  const lines = new Set(allowances.map(lineOf));
  const used = new Set<string>();
  const told = diagnostics.filter((diagnostic) => {
    const line = lineOf(diagnostic);
    if (always.has(diagnostic.rule) || !lines.has(line)) return true;
    used.add(line);
    return false;
  });
  return { told, unused: allowances.filter((allowance) => !used.has(lineOf(allowance))) };
}

/** The line that a finding or an allowance is of, with its rule. */
function lineOf({ rule, place }: Pick<Diagnostic, 'rule' | 'place'>): string {
  return `${rule} ${place.start.line} ${place.file}`;
}
