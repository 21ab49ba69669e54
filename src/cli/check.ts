import { rules } from '../check/index.ts';
import { type Diagnostic, reportGithub, reportJson, reportSarif } from '../diagnostics/index.ts';
import { count, exitCodes, stdout } from './console.ts';
import { loadCourse } from './load-course.ts';
import { mendFiles } from './mend-files.ts';
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
    mended = await mendFiles(folder, loaded);
    if (mended > 0) loaded = await loadCourse(folder);
  }
  if (format !== 'text') stdout.printLines(report(format, loaded.diagnostics, folder));
  else {
    if (fix) stdout.print`${count(mended, 'repair')} made.\n`;
    stdout.printFindings(loaded);
    if (loaded.diagnostics.length === 0) {
      const { chapters, graph } = loaded.course;
      const positions = Object.keys(graph).length;
      stdout.print`No findings: ${count(chapters.length, 'chapter')}, ${count(positions, 'position')}.\n`;
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
