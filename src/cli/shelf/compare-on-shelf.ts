import { jsonVersion, UserError, writeJsonLine } from '../../diagnostics/index.ts';
import { openShelf } from '../../pipeline/shelf/index.ts';
import { codeOf, compareCourse } from '../compare/compare-course.ts';
import type { CompareOptions } from '../compare/compare-formats.ts';
import { stderr, stdout } from '../console.ts';
import { readableShelf } from './readable-shelf.ts';

/** `linewright compare` of a shelf: the games against each course, one after the other. */
export async function compareOnShelf(
  file: string,
  folder: string,
  options: CompareOptions,
): Promise<number> {
  if (file === '-') {
    throw new UserError(
      'the games are read once for each course, and the standard input can be read only once',
      'give a file',
    );
  }
  const shelf = readableShelf(await openShelf(folder));
  const asJson = options.format === 'json';
  let code = 0;
  let isFirst = true;
  for (const [index, course] of shelf.courses.entries()) {
    if (index > 0 && !asJson) stdout.print`\n`;
    if (!asJson) stdout.print`${course.path}:\n\n`;
    const before = isFirst ? `{\n"version": ${jsonVersion},\n"courses": [\n` : ',\n';
    const beginning = `${before}{\n  "folder": ${writeJsonLine(course.path)},`;
    const compared = await compareCourse(file, shelf.folderOf(course), options, beginning);
    code = Math.max(code, codeOf[compared]);
    if (compared === 'no-game') return code;
    if (compared === 'course-errors') {
      if (asJson) stderr.print`The course ${course.path} was left out.\n`;
    } else isFirst = false;
  }
  if (asJson) {
    stdout.printLines(isFirst ? `{\n"version": ${jsonVersion},\n"courses": []\n}\n` : ']\n}\n');
  }
  return code;
}
