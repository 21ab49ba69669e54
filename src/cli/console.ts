import { reportText } from '../diagnostics/index.ts';
import type { LoadedCourse } from './load-course.ts';

/** Exit codes of every command. */
export const exitCodes = { clean: 0, findings: 1, failed: 2 } as const;

/** Whether a stream takes colours: a terminal, unless NO_COLOR or FORCE_COLOR say otherwise. */
export function takesColor(stream: NodeJS.WriteStream): boolean {
  if (stream.isTTY) return stream.hasColors();
  const { FORCE_COLOR: force } = process.env;
  return force !== undefined && force !== '0' && force !== 'false';
}

/** Prints the findings of a course, if it has any, with their source lines. */
export function printFindings(
  { diagnostics, textOf }: Pick<LoadedCourse, 'diagnostics' | 'textOf'>,
  stream: NodeJS.WriteStream,
): void {
  if (diagnostics.length === 0) return;
  stream.write(reportText(diagnostics, { textOf, color: takesColor(stream) }));
}

export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}
