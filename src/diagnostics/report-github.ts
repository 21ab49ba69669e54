import type { Diagnostic } from './diagnostic.ts';
import { printable } from './printable.ts';
import { ruleAddress } from './rule-address.ts';

/**
 * The findings as workflow commands, one a line, which continuous integration shows beside the
 * changed lines: `::error file=…,line=…,col=…,endLine=…,endColumn=…,title=…::message`.
 * `root` is the course folder as seen from the repository, so that the paths lead to its files; with `handbook`, the
 * address that it is published at, each tells where the handbook speaks of its rule.
 */
export function reportGithub(
  diagnostics: readonly Diagnostic[],
  root = '',
  handbook?: string,
): string {
  return diagnostics
    .map(({ severity, rule, place, message, hint }) => {
      const properties = {
        file: root === '' ? place.file : `${root}/${place.file}`,
        line: place.start.line,
        col: place.start.column,
        endLine: place.end.line,
        endColumn: place.end.column,
        title: rule,
      };
      const list = Object.entries(properties)
        .map(([name, value]) => `${name}=${escapeProperty(String(value))}`)
        .join(',');
      const help = handbook && ruleAddress(handbook, rule);
      const text = [message, hint, help].filter((part) => part !== undefined).join('\n');
      return `::${severity} ${list}::${escapeData(text)}\n`;
    })
    .join('');
}

function escapeData(text: string): string {
  const escaped = text.replaceAll('%', '%25').replaceAll('\r', '%0D').replaceAll('\n', '%0A');
  return printable(escaped);
}

function escapeProperty(text: string): string {
  return escapeData(text).replaceAll(':', '%3A').replaceAll(',', '%2C');
}
