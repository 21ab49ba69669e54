import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import {
  createLocator,
  type Diagnostic,
  type Fix,
  jsonVersion,
  printable,
  UserError,
  writeJson,
} from '../../diagnostics/index.ts';
import {
  gamesChapter,
  type Laid,
  layFile,
  readArchive,
  writeBranches,
} from '../../import/index.ts';
import { buildCourse, type Course, slug } from '../../model/index.ts';
import { type CourseFiles, findFiles, readCourse } from '../../read/index.ts';
import { command } from '../called-as.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { loadFiles } from '../load-course.ts';
import { makeFixes } from '../mend-files.ts';
import type { ImportOptions } from './import.ts';
import { laidAsJson, type Plan, reportLaid } from './import-into-report.ts';

/**
 * `linewright import --into`: lays the games of a PGN file against a course and reports what is new, what disagrees with
 * the advice and what is there already. `--write` adds the new lines at their positions and whole games in a chapter of
 * their own, for the author to finish.
 */
export async function importInto(
  file: string,
  folder: string,
  options: ImportOptions,
): Promise<number> {
  const files = await findFiles(folder);
  const loaded = await loadFiles(files, { as: path.resolve(folder) });
  const { course, textOf } = loaded;
  checkMoves(folder, loaded.diagnostics, options);
  const laid = await layFile(course, readArchive(file), {
    as: options.as ?? 'auto',
    withoutClocks: options.without === 'clocks',
    pastEnds: options.pastEnds,
  });
  const plan = planOf(laid, { files, course, textOf, file });
  const isWritten = options.write === true && (plan.fixes.length > 0 || plan.chapter !== undefined);
  if (isWritten) await writePlan(folder, plan, textOf);
  const facts = { file: printable(file), folder, course, laid, plan, isWritten };
  if (options.format === 'json') {
    stdout.printLines(writeJson({ version: jsonVersion, ...laidAsJson(facts) }));
    return exitCodes.clean;
  }
  for (const { game, line, message } of laid.notes.slice(0, toldNotes)) {
    stderr.print`${file}:${line}: game ${game}: ${message}\n`;
  }
  const more = laid.notes.length - toldNotes;
  if (more > 0) stderr.print`… and ${more} more, which \`--format json\` has.\n`;
  stdout.printLines(reportLaid(facts));
  if (isWritten) {
    const { diagnostics } = await loadFiles(await findFiles(folder), { as: path.resolve(folder) });
    stdout.print`\`${command('check', folder)}\` has ${count(diagnostics.length, 'finding')} for you to settle.\n`;
  }
  return exitCodes.clean;
}

/**
 * Moves behind an unplayable one have no position, so a second import would write them again.
 * @throws UserError where something is to be written.
 */
function checkMoves(
  folder: string,
  diagnostics: readonly Diagnostic[],
  { write }: ImportOptions,
): void {
  const broken = diagnostics.filter(
    ({ rule, severity }) => severity === 'error' && /^(?:move|chapter)-/.test(rule),
  );
  if (broken.length === 0) return;
  const errors = `the moves of ${folder} have ${count(broken.length, 'error')}`;
  if (!write) {
    stderr.print`Since ${errors}, what stands behind counts as new.\n`;
    return;
  }
  throw new UserError(
    `${errors}, so nobody knows what stands behind`,
    `mend what \`${command('check', folder)}\` says of them first`,
  );
}

const toldNotes = 12;

interface PlanFacts {
  readonly files: CourseFiles;
  readonly course: Course;
  readonly textOf: (file: string) => string | undefined;
  readonly file: string;
}

function planOf(laid: Laid, { files, course, textOf, file }: PlanFacts): Plan {
  const name = printable(path.basename(file));
  const texts = new Map(
    course.chapters.map((chapter) => [chapter.file, textOf(chapter.file) ?? '']),
  );
  const { texts: changed, refused } = writeBranches(course, laid.branches, {
    texts,
    from: name,
    read: (now) => {
      const chapters = files.chapters.map((each) => ({
        ...each,
        text: now.get(each.path) ?? each.text,
      }));
      return buildCourse(readCourse({ ...files, chapters }));
    },
  });
  const fixes = [...changed].map(([each, text]) => changeOf(each, texts.get(each) ?? '', text));
  const games = laid.played.filter(({ isThere }) => !isThere);
  if (games.length === 0) return { fixes, refused };
  const chapter = { path: freePath(files, name), text: gamesChapter(name, games) };
  return { fixes, refused, chapter };
}

/** The stretch of a file that differs. */
function changeOf(file: string, before: string, after: string): Fix {
  const shorter = Math.min(before.length, after.length);
  let start = 0;
  while (start < shorter && before[start] === after[start]) start++;
  let behind = 0;
  while (behind < shorter - start && before.at(-1 - behind) === after.at(-1 - behind)) behind++;
  const pointAt = createLocator(before);
  const end = before.length - behind;
  const place = { file, start: pointAt(start), end: pointAt(end) };
  return { place, text: after.slice(start, after.length - behind) };
}

/** Behind the last chapter, under a name that no file has. */
function freePath({ chapters }: CourseFiles, name: string): string {
  const numbers = chapters.flatMap((each) => /^chapters\/(\d+)/.exec(each.path)?.[1] ?? []);
  // As many digits as the others, so that it sorts behind them.
  const digits = Math.max(0, ...numbers.map((each) => each.length));
  const first = String(Math.max(0, ...numbers.map(Number)) + 1).padStart(digits, '0');
  const base = slug(`games from ${name.replace(/\.pgn$/i, '')}`);
  const taken = new Set(chapters.map((each) => each.path.toLowerCase()));
  for (let at = 1; ; at++) {
    const found = `chapters/${first}-${base}${at === 1 ? '' : `-${at}`}.md`;
    if (!taken.has(found.toLowerCase())) return found;
  }
}

async function writePlan(
  folder: string,
  { fixes, chapter }: Plan,
  textOf: (file: string) => string | undefined,
): Promise<void> {
  await makeFixes(folder, { fixes, textOf });
  if (chapter === undefined) return;
  // Fails if the file has been made meanwhile.
  await writeFile(path.join(folder, chapter.path), chapter.text, { flag: 'wx' });
}

/** @throws UserError for options of the other kind of import. */
export function checkIntoOptions({ into, out, write, format, as, pastEnds }: ImportOptions): void {
  if (into === undefined && (write || pastEnds || format !== undefined || as !== undefined)) {
    throw new UserError(
      '`--write`, `--past-ends`, `--format` and `--as` belong to `--into`',
      'name the course that the file is laid against: `--into DIR`',
    );
  }
  if (into !== undefined && out !== undefined) {
    throw new UserError(
      'an import goes into a course or makes one',
      'leave out `--out`, or `--into`',
    );
  }
}
