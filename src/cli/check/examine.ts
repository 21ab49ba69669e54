import { claimFixes } from '../../check/index.ts';
import type { FolderOptions } from '../../pipeline/index.ts';
import { documentsOf, leaveOutDrafts } from '../../read/index.ts';
import type { CurrentCourse } from '../../workspace/index.ts';
import { openToCheck } from '../load-course.ts';
import { makeFixes, mendFiles } from '../mend-files.ts';
import type { CheckOptions } from './check-options.ts';

/** Checks a course, and repairs its files if asked to. */
export async function examine(
  folder: string,
  { fix, claims }: Pick<CheckOptions, 'fix' | 'claims'>,
  { files, lookAround }: Pick<FolderOptions, 'files' | 'lookAround'> = {},
) {
  const open = () => openToCheck(folder, { lookAround });
  let loaded = await openToCheck(folder, { files, lookAround });
  let mended = 0;
  if (fix) {
    const { textOf, current } = loaded;
    mended = await mendFiles(folder, { textOf, diagnostics: current.diagnostics });
    if (mended > 0) loaded = await open();
  }
  let added = 0;
  if (claims) {
    const { textOf, current } = loaded;
    added = await makeFixes(folder, { textOf, fixes: claimFixes(current.course(), textOf) });
    if (added > 0) loaded = await open();
  }
  const { current, textOf } = loaded;
  return { current, textOf, mended, added };
}

/** Whether all errors stand in chapters that are not published; false without errors. */
export function areInDrafts({ diagnostics, files }: CurrentCourse): boolean {
  const published = new Set(documentsOf(leaveOutDrafts(files)));
  const drafts = new Set(
    documentsOf(files).flatMap((document) => (published.has(document) ? [] : [document.path])),
  );
  const errors = diagnostics.filter(({ severity }) => severity === 'error');
  return errors.length > 0 && errors.every(({ place }) => drafts.has(place.file));
}
