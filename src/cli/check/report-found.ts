import path from 'node:path';
import { rules } from '../../check/index.ts';
import { type Diagnostic, reportGithub, reportJson, reportSarif } from '../../diagnostics/index.ts';
import { command } from '../called-as.ts';
import { count, exitCodes, stdout } from '../console.ts';
import { handbookAddress } from '../handbook-address.ts';
import { packageVersion } from '../package-version.ts';
import type { CheckOptions } from './check-options.ts';

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
export function reportFound(
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
