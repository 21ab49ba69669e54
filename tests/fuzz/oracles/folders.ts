/** Oracles for courses on a disk, where files are bytes and come in any order. */
import { mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { type LoadedCourse, loadCourse } from '../../../src/cli/load-course.ts';
import { mendFiles } from '../../../src/cli/mend-files.ts';
import { NoCourseError } from '../../../src/read/index.ts';
import type { Files, Oracle } from '../case.ts';

/** Puts a course on the disk, its files in the order given. Names that a disk refuses are left out. */
function writeCourse(folder: string, files: readonly (readonly [string, string])[]): void {
  for (const [file, bytes] of files) {
    const full = path.join(folder, file);
    try {
      mkdirSync(path.dirname(full), { recursive: true });
      writeFileSync(full, Buffer.from(bytes, 'latin1'));
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'ENAMETOOLONG'))
        throw error;
    }
  }
}

async function load(folder: string): Promise<LoadedCourse | string> {
  try {
    return await loadCourse(folder);
  } catch (error) {
    if (error instanceof NoCourseError) return error.message.replaceAll(folder, 'FOLDER');
    throw error;
  }
}

const told = (loaded: LoadedCourse | string) =>
  typeof loaded === 'string' ? loaded : JSON.stringify(loaded.diagnostics);

export const steadyFolders: Oracle<Files> = {
  name: 'steady folders',
  async *examine(files) {
    const work = mkdtempSync(path.join(tmpdir(), 'linewright-fuzz-'));
    try {
      const [one, two] = [path.join(work, 'one'), path.join(work, 'two')];
      const list = Object.entries(files);
      mkdirSync(one);
      mkdirSync(two);
      writeCourse(one, list);
      writeCourse(two, [...list].reverse());
      const loaded = await load(one);
      if (told(await load(two)) !== told(loaded)) yield 'the order of files on the disk matters';
      if (typeof loaded === 'string') return;
      yield* await examineRepairs(one, loaded);
    } finally {
      rmSync(work, { recursive: true, force: true });
    }
  },
};

async function examineRepairs(folder: string, loaded: LoadedCourse): Promise<string[]> {
  const faults: string[] = [];
  const fixes = loaded.diagnostics.flatMap(({ fixes = [] }) => fixes);
  const names = [...new Set(fixes.map(({ place }) => place.file))];
  const before = names.map((name) => readFileSync(path.join(folder, name)));
  await mendFiles(folder, loaded);
  for (const [index, name] of names.entries()) {
    const [old, fresh] = [before[index] ?? Buffer.of(), readFileSync(path.join(folder, name))];
    const start = (bytes: Buffer) => bytes.subarray(0, 3).toString('hex') === 'efbbbf';
    if (start(old) !== start(fresh)) faults.push('a repair touched the byte order mark');
    // A repair may add a line, whose end is of the kind that the file has.
    const ends = (bytes: Buffer) => new Set(bytes.toString('latin1').match(/\r\n?|\n/g));
    const kinds = ends(old);
    if (kinds.size > 0 && [...ends(fresh)].some((end) => !kinds.has(end))) {
      faults.push('a repair brought another kind of line end');
    }
  }
  const again = await load(folder);
  if (typeof again === 'string') return [...faults, again];
  const left = again.diagnostics.flatMap(({ fixes = [] }) => fixes);
  if (left.length > 0) faults.push(`repairs are left: ${JSON.stringify(left[0])}`);
  return faults;
}
