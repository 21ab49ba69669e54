import { styleText } from 'node:util';
import type { Diagnostic } from './diagnostic.ts';
import { lineStarts } from './locate.ts';
import type { Place } from './place.ts';
import { printable } from './printable.ts';
import { ruleAddress } from './rule-address.ts';

export interface TextReportOptions {
  /** The text of a file of the course, for its source lines; `undefined` where there is none. */
  readonly textOf: (file: string) => string | undefined;
  readonly color: boolean;
  /** The address that the handbook is published at, which ends with `/`. */
  readonly handbook?: string | undefined;
}

/** The longest stretch of a source line that is shown; longer ones are cut around the carets. */
const excerptWidth = 96;

/**
 * The findings as a person reads them in a terminal: place, sentence, the source line with
 * carets under the words meant, what to do, where the handbook tells more, and the related places. Ends with a count.
 */
export function reportText(
  diagnostics: readonly Diagnostic[],
  { textOf, color, handbook }: TextReportOptions,
): string {
  const paint = (style: Parameters<typeof styleText>[0], text: string) =>
    color ? styleText(style, text, { validateStream: false }) : text;
  const lines = createLineReader(textOf);
  let report = '';
  for (const diagnostic of diagnostics) {
    const severity = paint(diagnostic.severity === 'error' ? 'red' : 'yellow', diagnostic.severity);
    report += `${paint('bold', address(diagnostic.place))}  ${severity}  ${diagnostic.rule}\n`;
    report += `  ${printable(diagnostic.message)}\n`;
    report += excerpt(diagnostic.place, lines, (text) => paint('red', text));
    if (diagnostic.hint !== undefined)
      report += `  ${paint('cyan', 'hint:')} ${printable(diagnostic.hint)}\n`;
    if (handbook !== undefined)
      report += `  ${paint('dim', 'help:')} ${ruleAddress(handbook, diagnostic.rule)}\n`;
    for (const related of diagnostic.related) {
      report += `  ${paint('dim', 'see:')} ${address(related.place)}  ${printable(related.message)}\n`;
      report += excerpt(related.place, lines, (text) => paint('dim', text));
    }
    report += '\n';
  }
  return report + paint(diagnostics.length === 0 ? 'green' : 'bold', summary(diagnostics));
}

function address(place: Place): string {
  return `${printable(place.file)}:${place.start.line}:${place.start.column}`;
}

function summary(diagnostics: readonly Diagnostic[]): string {
  if (diagnostics.length === 0) return 'No findings.\n';
  const errors = diagnostics.filter(({ severity }) => severity === 'error').length;
  const warnings = diagnostics.length - errors;
  const parts = [];
  if (errors > 0) parts.push(`${errors} ${errors === 1 ? 'error' : 'errors'}`);
  if (warnings > 0) parts.push(`${warnings} ${warnings === 1 ? 'warning' : 'warnings'}`);
  return `${parts.join(', ')}\n`;
}

function createLineReader(textOf: TextReportOptions['textOf']) {
  const files = new Map<string, { text: string; starts: number[] } | undefined>();
  return (place: Place): string | undefined => {
    if (!files.has(place.file)) {
      const text = textOf(place.file);
      files.set(place.file, text === undefined ? undefined : { text, starts: lineStarts(text) });
    }
    const file = files.get(place.file);
    const start = file?.starts[place.start.line - 1];
    if (!file || start === undefined) return undefined;
    return file.text.slice(start, file.starts[place.start.line]).replace(/[\r\n]+$/, '');
  };
}

function excerpt(
  place: Place,
  lineOf: (place: Place) => string | undefined,
  paint: (text: string) => string,
): string {
  const line = lineOf(place);
  if (line === undefined || line.trim() === '') return '';
  const from = place.start.column - 1;
  const to = place.end.line === place.start.line ? place.end.column - 1 : line.length;
  const cut = from > excerptWidth * 0.7 ? from - Math.floor(excerptWidth * 0.4) : 0;
  const shown = printable(line.slice(cut, cut + excerptWidth));
  const before = cut > 0 ? '…' : '';
  const behind = cut + excerptWidth < line.length ? '…' : '';
  const length = Math.max(1, Math.min(to, cut + excerptWidth) - from);
  const number = String(place.start.line);
  const indent = ' '.repeat(before.length + from - cut);
  return (
    `  ${number} | ${before}${shown}${behind}\n` +
    `  ${' '.repeat(number.length)} | ${indent}${paint('^'.repeat(length))}\n`
  );
}
