import path from 'node:path';
import type { CourseEntry } from '../../check/index.ts';
import { cacheFolder, filesIn, readKeptResults } from '../../pipeline/index.ts';
import {
  type CourseSeen,
  keepCourse,
  lookWithin,
  openShelf,
  textsOf,
} from '../../pipeline/shelf/index.ts';
import type { CheckOptions } from '../check/check-options.ts';
import { areInDrafts, examine } from '../check/examine.ts';
import { reportFound } from '../check/report-found.ts';
import { count } from '../console.ts';

interface Examined extends Omit<CourseSeen, 'course'> {
  readonly chapters: number;
  readonly positions: number;
  readonly mended: number;
  readonly added: number;
  readonly inDrafts: boolean;
}

/** `linewright check` of a shelf: checks each course, then what they say of each other. */
export async function checkShelf(folder: string, options: CheckOptions): Promise<number> {
  const shelf = await openShelf(folder);
  const seen: CourseSeen[] = [];
  const sums = { chapters: 0, positions: 0, mended: 0, added: 0 };
  let errorsElsewhere = false;
  const entries = new Map<string, CourseEntry>();
  const lookAround = lookWithin(shelf, entries);
  for (const course of shelf.courses) {
    const found = await examineOnShelf(shelf.folderOf(course), options, lookAround);
    entries.set(course.path, found.entry);
    seen.push({ course, entry: found.entry, diagnostics: found.diagnostics });
    if (found.diagnostics.some(isError) && !found.inDrafts) errorsElsewhere = true;
    for (const each of ['chapters', 'positions', 'mended', 'added'] as const) {
      sums[each] += found[each];
    }
  }
  const { ofShelf, all: diagnostics } = shelf.findings(seen);
  const inDrafts = diagnostics.some(isError) && !errorsElsewhere && !ofShelf.some(isError);
  const textOf = await textsOf(folder, diagnostics);
  const size = [
    count(seen.length, 'course'),
    count(sums.chapters, 'chapter'),
    count(sums.positions, 'position'),
  ];
  return reportFound(
    { diagnostics, textOf, inDrafts, mended: sums.mended, added: sums.added },
    { ...options, folder },
    size.join(', '),
  );
}

/** Does not even open a course that has not changed since its last check. */
async function examineOnShelf(
  folder: string,
  options: CheckOptions,
  lookAround: ReturnType<typeof lookWithin>,
): Promise<Examined> {
  const files = await filesIn(folder, { lookAround });
  const facts = await readKeptResults(cacheFolder(), path.resolve(folder));
  const keeper = await keepCourse<Examined>('check', folder, files, [facts]);
  const mayMend = options.fix || options.claims;
  const kept = mayMend ? undefined : await keeper.read();
  if (kept) return kept;
  const { current, mended, added } = await examine(folder, options, { files, lookAround });
  const { diagnostics, chapters, positions } = current;
  const inDrafts = areInDrafts(current);
  const found = { entry: current.entry(), diagnostics, chapters, positions, inDrafts };
  // Repaired files are not the ones that were read.
  if (!mayMend) await keeper.write({ ...found, mended: 0, added: 0 });
  return { ...found, mended, added };
}

function isError({ severity }: { readonly severity: string }): boolean {
  return severity === 'error';
}
