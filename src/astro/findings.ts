import path from 'node:path';
import type { AstroIntegrationLogger } from 'astro';
import { printableLines, reportText } from '../diagnostics/index.ts';
import type { LoadedCourse } from '../pipeline/index.ts';
import { siteError } from './site-error.ts';

/** A course by its folder, and as its author named that. */
interface ReadCourse {
  readonly folder: string;
  readonly given: { readonly course: string };
}

type Found = Pick<LoadedCourse, 'diagnostics' | 'textOf'>;

/** One error for all findings of a course, at the place of the first that stops it. */
export function findingsError({ folder, given }: ReadCourse, found: Found): Error {
  const [first] = found.diagnostics.filter(({ severity }) => severity === 'error');
  return siteError(
    `the course in ${given.course} cannot be published as it stands.\n\n${report(found)}`,
    'Mend what is called an error. `linewright check` lists the same, and repairs some of it with `--fix`.',
    first && { file: path.join(folder, first.place.file), ...first.place.start },
  );
}

/** Tells of the findings of a course, where it has any. */
export function tellFindings(found: Found, logger: AstroIntegrationLogger): void {
  const { diagnostics } = found;
  if (diagnostics.length === 0) return;
  const isError = diagnostics.some(({ severity }) => severity === 'error');
  logger[isError ? 'error' : 'warn'](`findings\n\n${report(found)}`);
}

function report({ diagnostics, textOf }: Found): string {
  return printableLines(reportText(diagnostics, { textOf, color: false })).trimEnd();
}
