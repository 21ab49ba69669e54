import { createHash } from 'node:crypto';
import type { PreviewedCourse } from '../../check/index.ts';
import type { DeskFinding } from '../../contract/index.ts';
import type { Diagnostic } from '../../diagnostics/index.ts';
import { documentsOf } from '../../model/index.ts';

/**
 * The findings of a course for the pages of `dev`. Their ids stay while other findings come and go, so that a page keeps
 * its notes.
 * @param fileOf the author's name of a file that the course has under another.
 */
export function deskFindings(
  { course, diagnostics }: Pick<PreviewedCourse, 'course' | 'diagnostics'>,
  fileOf = (file: string) => file,
): DeskFinding[] {
  const pages = new Map(documentsOf(course).map(({ file, id }) => [file, `${id}.html`]));
  const seen = new Map<string, number>();
  return diagnostics.map(({ rule, severity, message, hint, place }: Diagnostic): DeskFinding => {
    const name = hashOf([rule, place.file, message]);
    const before = seen.get(name) ?? 0;
    seen.set(name, before + 1);
    return {
      id: `desk-${name}${before === 0 ? '' : `-${before + 1}`}`,
      severity,
      rule,
      message,
      hint,
      file: fileOf(place.file),
      line: place.start.line,
      column: place.start.column,
      page: pages.get(place.file),
    };
  });
}

function hashOf(words: readonly string[]): string {
  return createHash('sha256').update(JSON.stringify(words)).digest('hex').slice(0, 10);
}
