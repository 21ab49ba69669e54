import { access, mkdir, writeFile } from 'node:fs/promises';
import path from 'node:path';
import {
  compareCourses,
  findJudgementsToAsk,
  type JudgementToAsk,
  makeNews,
  writeChanges,
} from '../changes/index.ts';
import { jsonVersion, printable, UserError, writeJson } from '../diagnostics/index.ts';
import { listFolder } from '../files/index.ts';
import type { Course } from '../model/index.ts';
import { isShelf } from '../read/index.ts';
import { languageName } from '../translation/index.ts';
import { readRevision } from '../workspace/index.ts';
import { count, exitCodes, stderr, stdout } from './console.ts';
import { judgementData, printJudgement } from './judgements.ts';
import { type LoadedCourse, loadFiles, loadForReaders } from './load-course.ts';

export interface ChangesOptions {
  readonly format: 'text' | 'markdown' | 'json';
  /** Adds a file to the course's `news/` instead of printing. */
  readonly write: boolean;
  /** `2026-11-25`: the date of that file. */
  readonly date: string;
}

/**
 * `linewright changes`: what changed for a student between two editions. Each is a folder, or a
 * git revision of the course in `folder`.
 */
export async function changes(
  before: string,
  after: string,
  given: string | undefined,
  options: ChangesOptions,
): Promise<number> {
  for (const edition of [after, before, given ?? '']) {
    if (edition === '' || !(await isShelf(edition))) continue;
    throw new UserError(
      `${edition} is a shelf, and what changed is told of one course`,
      'name the folder of the course instead',
    );
  }
  // `changes v1.0 my-course` means a revision of that course.
  const folder = given ?? (await firstCourse([after, before])) ?? '.';
  const [old, now] = await Promise.all([
    load(before, folder, { lookForCode: false }),
    load(after, folder),
  ]);
  if (!now.checked) {
    stderr.printFindings(now);
    stderr.print`Nothing was compared: ${after} has errors.\n`;
    return exitCodes.findings;
  }
  if (!old.checked) {
    const errors = old.diagnostics.filter(({ severity }) => severity === 'error').length;
    stderr.print`${before} has ${count(errors, 'error')} by today's rules; moves that cannot be played count as missing there.\n`;
  }
  const found = compareCourses(old.course, now.checked);
  const { language } = now.course.settings;
  const toAsk = findJudgementsToAsk(old.course, now.checked);
  const isEmpty = found.chapters.length === 0 && found.side === undefined;
  if (options.write) {
    if (isEmpty) stdout.print`Nothing changed on the board: no news was written.\n`;
    else {
      const news = makeNews(found, { language, date: options.date, from: printable(before) });
      const file = await addNews(folder, options.date, news);
      stdout.print`${file} is written. Edit it as you like; the next build publishes it.\n`;
      for (const translation of now.translations) {
        const there = `${translation.folder}/news/${path.basename(file)}`;
        stdout.print`In ${languageName(translation.tag)} readers get it in these words until there is a ${there}.\n`;
      }
    }
  } else if (options.format === 'json') {
    const judgements = toAsk.map(({ judgement, why }) => ({
      ...judgementData(judgement, now.course),
      why,
    }));
    stdout.printLines(writeJson({ version: jsonVersion, ...found, judgements }));
  } else if (isEmpty) stdout.print`Nothing changed on the board.\n`;
  else stdout.printLines(writeChanges(found, { language, form: options.format }));
  if (options.format !== 'json' || options.write) askAgain(toAsk, now.course);
  return exitCodes.clean;
}

/** Judgements to ask again: for the author, so apart from what students read. */
function askAgain(toAsk: readonly JudgementToAsk[], course: Course): void {
  if (toAsk.length === 0) return;
  stderr.print`\nFor you alone: is this still your judgement? If so, date it anew.\n`;
  for (const { judgement, why } of toAsk) {
    printJudgement(stderr, judgement, course);
    stderr.print`  ${reasons[why]}\n`;
  }
}

const reasons: Readonly<Record<JudgementToAsk['why'], string>> = {
  lines: '(what the course shows from there on has changed)',
  old: '(older than the previous edition)',
};

/** Runs no code of the older edition, which may come from anywhere. */
async function load(
  edition: string,
  course: string,
  options?: Parameters<typeof loadForReaders>[1],
): Promise<LoadedCourse> {
  if (await isCourse(edition)) return loadForReaders(edition, options);
  const files = await readRevision(edition, course);
  return loadFiles(files, {
    as: `${path.resolve(course)} in the revision ${edition}`,
    drafts: 'left out',
  });
}

async function firstCourse(folders: readonly string[]): Promise<string | undefined> {
  for (const folder of folders) if (await isCourse(folder)) return folder;
  return undefined;
}

function isCourse(folder: string): Promise<boolean> {
  return access(path.join(folder, 'course.yaml')).then(
    () => true,
    () => false,
  );
}

/** Writes a file that does not exist yet: `2026-11-25.md`, else `2026-11-25-2.md`, … */
async function addNews(folder: string, date: string, text: string): Promise<string> {
  await mkdir(path.join(folder, 'news'), { recursive: true });
  // Refuses a link, which may lead out of the course.
  await listFolder(folder, 'news');
  for (let number = 1; ; number++) {
    const file = path.join(folder, 'news', `${date}${number === 1 ? '' : `-${number}`}.md`);
    try {
      await writeFile(file, text, { flag: 'wx' });
      return file;
    } catch (error) {
      if (!(error instanceof Error && 'code' in error && error.code === 'EEXIST')) throw error;
    }
  }
}
