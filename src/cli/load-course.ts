/** Loads courses for the commands, with progress on the terminal. */
import * as pipeline from '../pipeline/index.ts';
import { stderr } from './console.ts';
import { createProgressLine } from './progress-line.ts';
import { spareMemory } from './spare-memory.ts';

export type { LoadedCourse } from '../pipeline/index.ts';

const progress = createProgressLine(stderr);

export const loadCourse: typeof pipeline.loadCourse = (folder, options) =>
  pipeline.loadCourse(folder, { progress, ...options });

export const loadForReaders: typeof pipeline.loadForReaders = (folder, options) =>
  pipeline.loadForReaders(folder, { progress, ...options });

export const loadToPublish: typeof pipeline.loadToPublish = (folder, options) =>
  pipeline.loadToPublish(folder, { progress, ...options });

export const loadLazilyToPublish: typeof pipeline.loadLazilyToPublish = (folder, options) =>
  pipeline.loadLazilyToPublish(folder, {
    progress: { ...progress, reads: (chapters) => spareMemory(chapters, 'alone') },
    ...options,
  });

export const loadFiles: typeof pipeline.loadFiles = (files, options) =>
  pipeline.loadFiles(files, { progress, ...options });

export const courseIn: typeof pipeline.courseIn = (folder, _progress, lookAround) =>
  pipeline.courseIn(folder, progress, lookAround);

export const openToCheck: typeof pipeline.openToCheck = (folder, options) =>
  pipeline.openToCheck(folder, { progress, ...options });

/** The address of a translation's pages, where the command line gives that of the course. */
export function siteBelow(
  { below }: pipeline.LoadedCourse,
  { site }: { readonly site?: string | undefined },
): { readonly site?: string } {
  if (site === undefined) return {};
  return { site: below === undefined ? site : `${site.replace(/\/+$/, '')}/${below}` };
}
