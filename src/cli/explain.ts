import { rules } from '../check/index.ts';
import { nearestName, ruleAddress, UserError } from '../diagnostics/index.ts';
import { exitCodes, stdout } from './console.ts';
import { handbookAddress } from './handbook-address.ts';

/** The ids of all rules, in the order of the handbook. */
export const ruleIds: readonly string[] = rules.map(({ id }) => id);

/** `linewright explain`: prints the handbook's section on a rule, or a line for each rule. */
export function explain(id: string | undefined): number {
  if (id === undefined) {
    const width = Math.max(...ruleIds.map((each) => each.length));
    for (const rule of rules) stdout.print`${rule.id.padEnd(width)}  ${rule.finds}\n`;
    return exitCodes.clean;
  }
  const rule = rules.find((each) => each.id === id);
  if (rule === undefined) {
    const near = nearestName(id, ruleIds);
    throw new UserError(
      `there is no rule ${id}`,
      near === undefined ? '`linewright explain` lists them' : `did you mean ${near}?`,
    );
  }
  const { severity, finds, documentation, always, examples } = rule;
  const may = always ? 'cannot be changed' : '`error`, `warning` or `off` in course.yaml';
  stdout.print`${id}  ${severity}\n${finds} (By default ${severity === 'error' ? 'an error' : 'a warning'}; ${may}.)\n\n`;
  stdout.printLines(`${documentation.trim()}\n`);
  for (const { title, course, findings, fixed } of examples) {
    const [found] = findings;
    if (found === undefined) continue;
    stdout.print`\nExample: ${title}\n`;
    const files = typeof course === 'string' ? [['', course] as const] : Object.entries(course);
    for (const [file, text] of files) {
      if (file !== '') stdout.print`  ${file}\n`;
      stdout.printLines(`${indent(text)}\n`);
    }
    for (const { message, hint } of findings) {
      stdout.print`  → ${message}\n`;
      if (hint !== undefined) stdout.print`    ${hint}\n`;
    }
    if (fixed !== undefined) stdout.printLines(`  After --fix:\n${indent(fixed)}\n`);
    break;
  }
  const handbook = handbookAddress();
  if (handbook !== undefined) stdout.print`\n${ruleAddress(handbook, id)}\n`;
  return exitCodes.clean;
}

function indent(text: string): string {
  return text.trimEnd().replace(/^(?=.)/gm, '    ');
}
