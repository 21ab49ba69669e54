import path from 'node:path';
import type { CheckedCourse } from '../check/index.ts';
import { bookFindings, makeBook } from '../publish/index.ts';
import { courseId } from '../site/render/index.ts';
import { cacheFolder } from './cache-folder.ts';
import { exitCodes, printFindings } from './console.ts';
import { courseDate } from './course-date.ts';
import type { ExportOptions } from './export-formats.ts';
import { loadCourse } from './load-course.ts';
import { replaceFile } from './replace-file.ts';

/** `linewright export`: checks the course and, if it has no error, writes it as one file. */
export async function exportCourse(folder: string, options: ExportOptions): Promise<number> {
  const loaded = await loadCourse(folder);
  const { checked, course, textOf } = loaded;
  const more = checked ? bookFindings(checked) : [];
  printFindings({ diagnostics: [...loaded.diagnostics, ...more], textOf }, process.stderr);
  if (!checked) {
    process.stderr.write('Nothing was written; an earlier file stands as it was.\n');
    return exitCodes.findings;
  }
  const out = options.out ?? path.join(folder, `${courseId(course)}.${options.format}`);
  const content = await contentOf(checked, folder, options);
  await replaceFile(out, content);
  process.stdout.write(`${out}: ${Math.ceil(content.length / 1000)} KB\n`);
  return exitCodes.clean;
}

async function contentOf(
  checked: CheckedCourse,
  folder: string,
  { format, site }: ExportOptions,
): Promise<Uint8Array> {
  switch (format) {
    case 'epub': {
      const modified = await courseDate(folder, checked.course);
      return makeBook(checked, { folder, modified, site, cacheDir: cacheFolder() });
    }
  }
}
