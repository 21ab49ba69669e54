import path from 'node:path';
import { claimFixes, rules } from '../check/index.ts';
import {
  type Diagnostic,
  reportGithub,
  reportJson,
  reportSarif,
  UserError,
} from '../diagnostics/index.ts';
import type { FolderOptions } from '../pipeline/index.ts';
import { documentsOf, isShelf, leaveOutDrafts } from '../read/index.ts';
import type { CurrentCourse } from '../workspace/index.ts';
import { command } from './called-as.ts';
import { count, exitCodes, stdout } from './console.ts';
import { handbookAddress } from './handbook-address.ts';
import { listJudgements } from './judgements.ts';
import { openToCheck } from './load-course.ts';
import { makeFixes, mendFiles } from './mend-files.ts';
import { packageVersion } from './package-version.ts';

export const checkFormats = ['text', 'json', 'sarif', 'github'] as const;

export interface CheckOptions {
  readonly format: (typeof checkFormats)[number];
  readonly fix: boolean;
  /** Lists the judgements of the course instead of its findings. */
  readonly judgements?: boolean;
  /** With `fix`: adds claims that prove what sentences state. */
  readonly claims?: boolean;
}

/** `linewright check`: prints all findings of a course; publishes nothing. */
export async function check(
  folder: string,
  { format, fix, judgements = false, claims = false }: CheckOptions,
): Promise<number> {
  if (judgements) {
    if (fix || claims || (format !== 'text' && format !== 'json')) {
      throw new UserError(
        'judgements are only listed',
        'use `--judgements` alone, or with `--format json`',
      );
    }
    return listJudgements(folder, format);
  }
  if (claims && !fix) {
    throw new UserError(
      '`--claims` writes into your files, as `--fix` does',
      'give `--fix --claims`',
    );
  }
  if (await isShelf(folder)) {
    const { checkShelf } = await import('./shelf/check-shelf.ts');
    return checkShelf(folder, { format, fix, claims });
  }
  const { current, textOf, ...made } = await examine(folder, { fix, claims });
  const { diagnostics, chapters, positions } = current;
  return tell(
    { diagnostics, textOf, inDrafts: areInDrafts(current), ...made },
    { format, fix, claims, folder },
    `${count(chapters, 'chapter')}, ${count(positions, 'position')}`,
  );
}

/** Checks a course, and repairs its files if asked to. */
export async function examine(
  folder: string,
  { fix, claims }: Pick<CheckOptions, 'fix' | 'claims'>,
  { files, lookAround }: Pick<FolderOptions, 'files' | 'lookAround'> = {},
) {
  const open = () => openToCheck(folder, { lookAround });
  let loaded = await openToCheck(folder, { files, lookAround });
  let mended = 0;
  if (fix) {
    const { textOf, current } = loaded;
    mended = await mendFiles(folder, { textOf, diagnostics: current.diagnostics });
    if (mended > 0) loaded = await open();
  }
  let added = 0;
  if (claims) {
    const { textOf, current } = loaded;
    added = await makeFixes(folder, { textOf, fixes: claimFixes(current.course(), textOf) });
    if (added > 0) loaded = await open();
  }
  const { current, textOf } = loaded;
  return { current, textOf, mended, added };
}

/** Findings of a course or shelf, and how much was repaired. */
export interface Found {
  readonly diagnostics: readonly Diagnostic[];
  readonly textOf: (file: string) => string | undefined;
  readonly mended: number;
  readonly added: number;
  /** Whether all errors stand in chapters that are not published; false without errors. */
  readonly inDrafts: boolean;
}

/**
 * Prints what was found.
 * @param size of what was looked at, in words.
 * @returns the exit code.
 */
export function tell(
  { diagnostics, textOf, mended, added, inDrafts }: Found,
  { format, fix, claims, folder }: CheckOptions & { readonly folder: string },
  size: string,
): number {
  if (format !== 'text') stdout.printLines(report(format, diagnostics, folder));
  else {
    if (fix) stdout.print`${count(mended, 'repair')} made.\n`;
    if (claims) stdout.print`Claims added behind ${count(added, 'sentence')}.\n`;
    stdout.printFindings({ diagnostics, textOf });
    if (inDrafts) stdout.print`All errors stand in drafts, which are not published.\n`;
    const [first] = diagnostics;
    if (first && rules.some(({ id }) => id === first.rule) && stdout.isTerminal()) {
      stdout.print`\`${command('explain', first.rule)}\` tells more of a rule.\n`;
    }
    if (diagnostics.length === 0) stdout.print`No findings: ${size}.\n`;
  }
  const hasError = diagnostics.some(({ severity }) => severity === 'error');
  return hasError ? exitCodes.findings : exitCodes.clean;
}

/** Whether all errors stand in chapters that are not published; false without errors. */
export function areInDrafts({ diagnostics, files }: CurrentCourse): boolean {
  const published = new Set(documentsOf(leaveOutDrafts(files)));
  const drafts = new Set(
    documentsOf(files).flatMap((document) => (published.has(document) ? [] : [document.path])),
  );
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  return errors.length > 0 && errors.every(({ place }) => drafts.has(place.file));
}

function report(
  format: Exclude<CheckOptions['format'], 'text'>,
  diagnostics: readonly Diagnostic[],
  folder: string,
): string {
  const root = seenFromHere(folder);
  const handbook = handbookAddress();
  switch (format) {
    case 'json':
      return reportJson(diagnostics, { handbook });
    case 'sarif':
      return reportSarif(diagnostics, { version: packageVersion(), rules, root, handbook });
    case 'github':
      return reportGithub(diagnostics, root, handbook);
  }
}

/** A folder relative to the working directory; empty if it lies outside. */
function seenFromHere(folder: string): string {
  const found = path.relative(process.cwd(), path.resolve(folder)).replaceAll('\\', '/');
  return /^\.\.(?:\/|$)|^[a-z]:/i.test(found) ? '' : found;
}
