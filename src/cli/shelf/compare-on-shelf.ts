import { UserError } from '../../diagnostics/index.ts';
import { openShelf } from '../../pipeline/shelf/index.ts';
import type { CompareOptions } from '../compare-formats.ts';
import { stdout } from '../console.ts';
import { readableShelf } from './readable-shelf.ts';

/** `linewright compare` of a shelf: the games against each course, one after the other. */
export async function compareOnShelf(
  file: string,
  folder: string,
  options: CompareOptions,
  compare: (file: string, folder: string, options: CompareOptions) => Promise<number>,
): Promise<number> {
  if (options.format === 'json') {
    throw new UserError('a shelf is compared as text', 'name one of its courses for JSON');
  }
  if (file === '-') {
    throw new UserError(
      'the games are read once for each course, and the standard input can be read only once',
      'give a file',
    );
  }
  const shelf = readableShelf(await openShelf(folder));
  let code = 0;
  for (const [index, course] of shelf.courses.entries()) {
    if (index > 0) stdout.print`\n`;
    stdout.print`${course.path}:\n\n`;
    code = Math.max(code, await compare(file, shelf.folderOf(course), options));
  }
  return code;
}
