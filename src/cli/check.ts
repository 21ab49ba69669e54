import { readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { rules } from '../check/index.ts';
import {
  applyFixes,
  type Diagnostic,
  type Fix,
  reportGithub,
  reportJson,
  reportSarif,
} from '../diagnostics/index.ts';
import { count, exitCodes, printFindings } from './console.ts';
import { loadCourse } from './load-course.ts';
import { packageVersion } from './package-version.ts';

export const checkFormats = ['text', 'json', 'sarif', 'github'] as const;

export interface CheckOptions {
  readonly format: (typeof checkFormats)[number];
  readonly fix: boolean;
}

/** `linewright check`: prints all findings of a course; publishes nothing. */
export async function check(folder: string, { format, fix }: CheckOptions): Promise<number> {
  let loaded = await loadCourse(folder);
  let mended = 0;
  if (fix) {
    mended = await mend(folder, loaded.diagnostics);
    if (mended > 0) loaded = await loadCourse(folder);
  }
  if (format !== 'text') process.stdout.write(report(format, loaded.diagnostics, folder));
  else {
    if (fix) process.stdout.write(`${count(mended, 'repair')} made.\n`);
    printFindings(loaded, process.stdout);
    if (loaded.diagnostics.length === 0) {
      const { chapters, graph } = loaded.course;
      const positions = Object.keys(graph).length;
      process.stdout.write(
        `No findings: ${count(chapters.length, 'chapter')}, ${count(positions, 'position')}.\n`,
      );
    }
  }
  return loaded.checked ? exitCodes.clean : exitCodes.findings;
}

function report(
  format: Exclude<CheckOptions['format'], 'text'>,
  diagnostics: readonly Diagnostic[],
  folder: string,
): string {
  switch (format) {
    case 'json':
      return reportJson(diagnostics);
    case 'sarif':
      return reportSarif(diagnostics, { version: packageVersion(), rules });
    case 'github':
      return reportGithub(diagnostics, folder.replace(/^\.\/?|\/$/g, '').replaceAll('\\', '/'));
  }
}

/** Makes the safe repairs in the author's files and returns how many they were. */
async function mend(folder: string, diagnostics: readonly Diagnostic[]): Promise<number> {
  const byFile = new Map<string, Fix[]>();
  for (const fix of diagnostics.flatMap(({ fixes = [] }) => fixes)) {
    byFile.set(fix.place.file, [...(byFile.get(fix.place.file) ?? []), fix]);
  }
  let mended = 0;
  for (const [file, fixes] of byFile) {
    const full = path.join(folder, file);
    const text = await readFile(full, 'utf8');
    // The places count from behind a byte order mark.
    const mark = text.startsWith('\uFEFF') ? '\uFEFF' : '';
    const fresh = `${full}.linewright-new`;
    await writeFile(fresh, mark + applyFixes(text.slice(mark.length), fixes));
    await rename(fresh, full);
    mended += fixes.length;
  }
  return mended;
}
