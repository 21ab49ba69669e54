import { readdir, rm, stat } from 'node:fs/promises';
import path from 'node:path';
import { codeHash, readPlainFile, sealOf } from '../files/index.ts';
import { replaceFile } from '../output/index.ts';
import type { KeptChapter } from './kept-chapter.ts';
import { hashOf } from './questions.ts';

/** In bytes: what is kept of ten thousand chapters. */
const largest = 300_000_000;

/**
 * What another process has kept of a course. What was kept by other code, is damaged or was
 * sealed with another key counts for nothing.
 * @param cache the folder of the user's cache.
 * @param course what the course is known by, such as its folder.
 */
export async function loadKept(cache: string, course: string): Promise<readonly KeptChapter[]> {
  const name = nameOf(course);
  try {
    const { bytes } = await readPlainFile(cache, name, largest);
    const text = Buffer.from(bytes).toString('utf8');
    const end = text.indexOf('\n');
    const rest = text.slice(end + 1);
    if (text.slice(0, end) !== (await sealFor(name, rest))) return [];
    return rest.split('\n').map(parseChapter);
  } catch {
    // Nothing was kept, or it cannot be read: then all is done afresh.
    return [];
  }
}

/**
 * Keeps what is known of a course for other processes: written aside and moved into its place, so that runs
 * at the same time each leave a whole file. A cache that cannot be written costs time, nothing else.
 */
export async function saveKept(
  cache: string,
  course: string,
  chapters: Iterable<KeptChapter>,
): Promise<void> {
  const name = nameOf(course);
  const rest = [...chapters].map(makeLine).join('\n');
  await replaceFile(path.join(cache, name), `${await sealFor(name, rest)}\n${rest}`)
    .then(() => dropOldest(cache))
    .catch(() => {});
}

/** So many courses are kept; what is older is hardly anybody's any more. */
const mostCourses = 50;

async function dropOldest(cache: string): Promise<void> {
  const names = (await readdir(cache)).filter((name) => /^course-[\w-]{22}\.jsonl$/.test(name));
  if (names.length <= mostCourses) return;
  const ages = await Promise.all(
    names.map(async (name) => ({ name, time: (await stat(path.join(cache, name))).mtimeMs })),
  );
  ages.sort((a, b) => b.time - a.time);
  for (const { name } of ages.slice(mostCourses)) await rm(path.join(cache, name), { force: true });
}

/** One file for each course, so that what is kept does not grow. */
function nameOf(course: string): string {
  return `course-${hashOf(course)}.jsonl`;
}

async function sealFor(name: string, content: string): Promise<string> {
  return sealOf(`${name} ${await codeHash()}`, content).toString('base64url');
}

type Asked = KeptChapter['checked']['asked'][number];

/** A question about a position of the chapter, which is most of them, as the number of its node. */
type ShortAsked = readonly [kind: Asked[0], about: string | number, print?: string];

function makeLine({ live: _, ...chapter }: KeptChapter): string {
  const numbers = new Map(keysOf(chapter).map((key, index) => [key, index]));
  const asked = chapter.checked.asked.map(([kind, about, print]): ShortAsked => {
    const short = numbers.get(about) ?? about;
    return print === '' ? [kind, short] : [kind, short, print];
  });
  return JSON.stringify({ ...chapter, checked: { ...chapter.checked, asked } });
}

function parseChapter(line: string): KeptChapter {
  const chapter = JSON.parse(line) as KeptChapter;
  const keys = keysOf(chapter);
  const short = chapter.checked.asked as readonly ShortAsked[];
  const asked = short.map(
    ([kind, about, print = '']): Asked => [
      kind,
      typeof about === 'number' ? (keys[about] ?? '') : about,
      print,
    ],
  );
  return { ...chapter, checked: { ...chapter.checked, asked } };
}

function keysOf({ summary }: Pick<KeptChapter, 'summary'>): string[] {
  return summary.blocks.flatMap(({ nodes }) => nodes.map(({ key }) => key));
}
