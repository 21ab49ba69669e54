import { readdir, realpath, stat } from 'node:fs/promises';
import { isAbsolute, join, relative, sep } from 'node:path';
import { ignoreMissing } from './error-code.ts';
import { markerFile } from './marker.ts';
import { OutputError } from './output-error.ts';
import { realOutput } from './real-output.ts';

/** What the author writes, in the folder of a course. */
const sources = [
  'course.yaml',
  'shelf.yaml',
  'chapters',
  'games',
  'media',
  'news',
  'pages',
  'translations',
  'rules',
];

/**
 * Refuses a folder that a run must not replace: one that holds the course, lies among its sources, or
 * has anything in it and was made by no earlier run.
 * @param out as the user names it, for the message.
 * @param real its real path.
 * @param course folder of the course, if the output is made of one.
 * @param more paths in that folder that are read as well.
 * @throws OutputError
 */
export async function checkOutput(
  out: string,
  real: string,
  course?: string,
  more: readonly string[] = [],
): Promise<void> {
  if (course !== undefined) await refuseCourse(out, real, course, more);
  const found = await stat(real).catch(ignoreMissing);
  if (found === undefined) return;
  if (!found.isDirectory()) {
    throw new OutputError(`${out} is a file, not a folder`, 'name another folder with --out');
  }
  const entries = await readdir(real);
  if (entries.length > 0 && !entries.includes(markerFile)) {
    throw new OutputError(
      `the folder ${out} holds something that is no earlier build, and would be lost`,
      'name another folder with --out, or empty this one first',
    );
  }
}

/**
 * Refuses a file among those that the author writes: what is exported there would take the place of a
 * source, or be read as one. Pictures and files to take along may be put into `media/`.
 */
export async function checkOutputFile(file: string, course: string): Promise<void> {
  // Boards are drawn without a course too.
  if ((await stat(join(course, 'course.yaml')).catch(() => undefined)) === undefined) return;
  const real = await realOutput(file);
  for (const { name, path } of await sourcesOf(await realpath(course))) {
    if (name === 'media' || !contains(path, real)) continue;
    throw new OutputError(
      `${file} would stand among the files that the course is read from (${name})`,
      'name another file with --out',
    );
  }
}

/**
 * Refuses an output that a link in the course leads out of it: whoever sent the course must not choose
 * what is replaced.
 */
export async function checkInside(out: string, course: string): Promise<void> {
  const folder = await realpath(course).catch(ignoreMissing);
  if (folder === undefined || contains(folder, await realOutput(out))) return;
  throw new OutputError(
    `${out} is a link, or lies behind one, that leads out of the course`,
    'name the folder that you mean with --out',
  );
}

async function refuseCourse(
  out: string,
  real: string,
  course: string,
  more: readonly string[],
): Promise<void> {
  const folder = await realpath(course).catch(ignoreMissing);
  // Whoever reads the course says that it is not there.
  if (folder === undefined) return;
  if (contains(real, folder)) {
    const what = real === folder ? 'is the folder of the course' : 'contains the course';
    throw new OutputError(
      `the folder ${out} ${what}, which would be lost`,
      'name another folder with --out',
    );
  }
  for (const { name, path } of await sourcesOf(folder, more)) {
    if (contains(path, real) || contains(real, path)) {
      throw new OutputError(
        `the folder ${out} lies where the course is read from (${name})`,
        'name another folder with --out',
      );
    }
  }
}

/** The sources of a course and their real paths: `chapters` may be a link to where they are kept. */
function sourcesOf(
  folder: string,
  more: readonly string[] = [],
): Promise<{ name: string; path: string }[]> {
  return Promise.all(
    [...sources, ...more].map(async (name) => {
      const path = join(folder, name);
      return { name, path: await realpath(path).catch(() => path) };
    }),
  );
}

/** Whether a folder is another one or lies around it; both real paths. */
function contains(outer: string, inner: string): boolean {
  const way = relative(outer, inner);
  return way === '' || (way !== '..' && !way.startsWith(`..${sep}`) && !isAbsolute(way));
}
