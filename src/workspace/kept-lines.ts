import { codeHash, dropOldest, readSealed, writeSealed } from '../files/index.ts';
import { hashOf } from './questions.ts';

/** In bytes: what is kept of ten thousand chapters. */
const largest = 1_000_000_000;

/** So many courses are kept; what is older is hardly anybody's any more. */
const mostCourses = 50;

/**
 * Lines that another process has kept of a course; none where they were kept by other code, are damaged or were
 * sealed with another key.
 * @param cache the folder of the user's cache.
 * @param course what the course is known by, such as its folder.
 */
export async function loadLines(cache: string, course: string): Promise<string[]> {
  const name = nameOf(course);
  const kept = await readSealed(cache, name, { sealedFor: await sealedFor(name), largest });
  return kept === undefined || kept.length === 0 ? [] : splitLines(kept);
}

/** A text of all lines could be longer than a string may be. */
function splitLines(bytes: Buffer): string[] {
  const lines: string[] = [];
  for (let start = 0; start <= bytes.length; ) {
    const next = bytes.indexOf('\n', start);
    const end = next < 0 ? bytes.length : next;
    lines.push(bytes.toString('utf8', start, end));
    start = end + 1;
  }
  return lines;
}

/** Keeps lines for other processes. A cache that cannot be written costs time, nothing else. */
export async function saveLines(
  cache: string,
  course: string,
  lines: readonly string[],
): Promise<void> {
  const name = nameOf(course);
  // A text of all lines could be longer than a string may be.
  const content = lines.map((line, index) => Buffer.from(index === 0 ? line : `\n${line}`));
  await writeSealed(cache, name, { sealedFor: await sealedFor(name), content })
    .then(() => dropOldest(cache, `findings-`, mostCourses))
    .catch(() => {});
}

/** One file for each course, so that what is kept does not grow. */
function nameOf(course: string): string {
  return `findings-${hashOf(course)}.jsonl`;
}

async function sealedFor(name: string): Promise<string> {
  return `${name} ${await codeHash()}`;
}
