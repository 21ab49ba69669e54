import { createHash } from 'node:crypto';
import { readSealed, writeSealed } from '../files/index.ts';
import type { CourseFiles, SourceFile } from '../read/index.ts';

/** In bytes: what an engine says of fifty thousand positions. */
const largest = 20_000_000;

/**
 * What an engine said of a course, where its author keeps that in the cache; a damaged file is as good as none. It
 * outlives editions of this program, since it is the work of hours.
 * @param cache folder of the user's cache.
 * @param course what the course is known by: its folder.
 */
export async function readKeptResults(cache: string, course: string): Promise<string | undefined> {
  const name = nameOf(course);
  const kept = await readSealed(cache, name, { sealedFor: name, largest });
  return kept?.toString('utf8');
}

/** @throws where it cannot be written. */
export async function writeKeptResults(cache: string, course: string, text: string): Promise<void> {
  const name = nameOf(course);
  await writeSealed(cache, name, { sealedFor: name, content: text });
}

/** The files of a course with the results that are kept in the cache. */
export async function withKeptResults(
  files: CourseFiles,
  cache: string,
  course: string,
): Promise<CourseFiles> {
  const text = await readKeptResults(cache, course);
  if (text === undefined) return files;
  const kept: SourceFile = { path: nameOf(course), text };
  return { ...files, facts: [...(files.facts ?? []), kept] };
}

function nameOf(course: string): string {
  return `engine-${createHash('sha256').update(course).digest('hex').slice(0, 16)}.tsv`;
}
