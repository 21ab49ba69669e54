import type { CourseEntry } from '../../check/index.ts';
import { type CourseSeen, lookWithin, openShelf, textsOf } from '../../pipeline/shelf/index.ts';
import { areInDrafts, type CheckOptions, examine, tell } from '../check.ts';
import { count } from '../console.ts';

/** `linewright check` of a shelf: each course by itself, then what they say of each other. */
export async function checkShelf(folder: string, options: CheckOptions): Promise<number> {
  const shelf = await openShelf(folder);
  const seen: CourseSeen[] = [];
  const sums = { chapters: 0, positions: 0, mended: 0, added: 0 };
  let errorsElsewhere = false;
  const entries = new Map<string, CourseEntry>();
  const lookAround = lookWithin(shelf, entries);
  for (const course of shelf.courses) {
    const { current, mended, added } = await examine(shelf.folderOf(course), options, lookAround);
    const { diagnostics, chapters, positions } = current;
    const entry = current.entry();
    entries.set(course.path, entry);
    seen.push({ course, entry, diagnostics });
    const hasError = diagnostics.some(({ severity }) => severity === 'error');
    if (hasError && !areInDrafts(current)) errorsElsewhere = true;
    sums.chapters += chapters;
    sums.positions += positions;
    sums.mended += mended;
    sums.added += added;
  }
  const { ofShelf, all: diagnostics } = shelf.findings(seen);
  const isError = ({ severity }: { readonly severity: string }) => severity === 'error';
  const inDrafts = diagnostics.some(isError) && !errorsElsewhere && !ofShelf.some(isError);
  const textOf = await textsOf(folder, diagnostics);
  const size = [
    count(seen.length, 'course'),
    count(sums.chapters, 'chapter'),
    count(sums.positions, 'position'),
  ];
  return tell(
    { diagnostics, textOf, inDrafts, mended: sums.mended, added: sums.added },
    { ...options, folder },
    size.join(', '),
  );
}
