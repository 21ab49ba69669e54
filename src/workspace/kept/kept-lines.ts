import { codeHash, dropOldest, readSealed, writeSealed } from '../../files/index.ts';
import { hashOf } from '../questions.ts';

/** Bytes: ten thousand chapters. */
const largest = 1_000_000_000;

const lineEnd = Buffer.from('\n');

/** Courses that are kept; the oldest go first. */
const mostCourses = 50;

/**
 * Lines that earlier processes kept of a course; none if other code kept them, or they are damaged or sealed with another
 * key.
 * @param cache folder of the user's cache.
 * @param course its folder.
 */
export async function loadLines(cache: string, course: string): Promise<Buffer[]> {
  const name = nameOf(course);
  const kept = await readSealed(cache, name, { sealedFor: await sealedFor(name), largest });
  return kept === undefined || kept.length === 0 ? [] : splitLines(kept);
}

/** Splits bytes: all lines together may exceed the longest string. */
function splitLines(bytes: Buffer): Buffer[] {
  const lines: Buffer[] = [];
  for (let start = 0; start <= bytes.length; ) {
    const next = bytes.indexOf('\n', start);
    const end = next < 0 ? bytes.length : next;
    lines.push(bytes.subarray(start, end));
    start = end + 1;
  }
  return lines;
}

/** Keeps lines for later processes. A cache that cannot be written costs only time. */
export async function saveLines(
  cache: string,
  course: string,
  lines: readonly Buffer[],
): Promise<void> {
  const name = nameOf(course);
  const content = lines.flatMap((line, index) => (index === 0 ? [line] : [lineEnd, line]));
  await writeSealed(cache, name, { sealedFor: await sealedFor(name), content })
    .then(() => dropOldest(cache, `findings-`, mostCourses))
    .catch(() => {});
}

/** One file a course, so that the cache does not grow. */
function nameOf(course: string): string {
  return `findings-${hashOf(course)}.jsonl`;
}

async function sealedFor(name: string): Promise<string> {
  return `${name} ${await codeHash()}`;
}
