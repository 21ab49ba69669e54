import { createHash } from 'node:crypto';
import { readSealed, writeSealed } from '../files/index.ts';
import type { CourseFiles, SourceFile } from '../read/index.ts';

/** Bytes: the results for fifty thousand positions. */
const largest = 20_000_000;

/**
 * The engine results of a course that are kept in the cache; a damaged file counts as missing. They outlive editions of
 * this program, since they are the work of hours.
 * @param cache folder of the user's cache.
 * @param course its folder.
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

/** Adds the results in the cache to the files of a course. */
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
