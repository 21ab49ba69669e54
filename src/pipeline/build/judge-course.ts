import { createHash } from 'node:crypto';
import path from 'node:path';
import type { PlayedTree } from '../../chess/index.ts';
import { coreHash, type Disagreement, judgeInThread } from '../../chess/second-judge/index.ts';
import { UserError } from '../../diagnostics/index.ts';
import { codeHash, dropOldest, readSealed, writeSealed } from '../../files/index.ts';
import { type Chapter, type Course, documentsOf, playedTreesIn } from '../../model/index.ts';

/** One in so many of the trees that were judged before is judged again, each build others. */
const share = 32;

/** So many courses are remembered. */
const mostCourses = 50;

/** What was judged before, kept between builds. */
interface JudgeRecord {
  readonly builds: number;
  readonly chapters: readonly JudgedChapter[];
}

export interface JudgeOptions {
  /** Where it is kept what was judged; what is damaged there is judged anew. */
  readonly cache: string;
  /** The course's folder, by which it is kept. */
  readonly folder: string;
  /** Of a chapter by its file: where it is the same, so are the chapter's lines. */
  readonly print: (file: string) => string;
}

/** A chapter, by its file and its print, with the hashes of its trees. */
type JudgedChapter = readonly [file: string, print: string, trees: readonly string[]];

/**
 * Has chess.js judge the lines of a course that are new since the last build, and some of the others,
 * before anything is published.
 * @returns how many trees were judged.
 * @throws UserError where the two sets of rules differ.
 */
export async function judgeCourse(
  course: Course,
  { cache, folder, print }: JudgeOptions,
  judge: (trees: readonly PlayedTree[]) => Promise<Disagreement | undefined> = judgeInThread,
): Promise<number> {
  const core = await coreHash();
  const file = `judged-${hashOf(path.resolve(folder)).slice(0, 16)}.txt`;
  const sealedFor = `${file} ${core} ${await codeHash()}`;
  const { builds, chapters } = await readRecord(cache, file, sealedFor);
  const judged = new Set(chapters.flatMap(([, , trees]) => trees));
  const isDue = (hash: string) =>
    !judged.has(hash) || Number.parseInt(hash.slice(0, 8), 16) % share === builds % share;
  const before = new Map(chapters.map((chapter) => [`${chapter[0]} ${chapter[1]}`, chapter]));
  const asked = new Map<string, PlayedTree>();
  const now = documentsOf(course).map((chapter): JudgedChapter => {
    const own = print(chapter.file);
    const known = before.get(`${chapter.file} ${own}`);
    // A chapter is not even played whose lines are all known and not asked for.
    if (known && !known[2].some(isDue)) return known;
    const trees = treesOf(chapter);
    for (const [hash, tree] of trees) if (isDue(hash)) asked.set(hash, tree);
    return [chapter.file, own, [...trees.keys()]];
  });
  const found = await judge([...asked.values()]);
  if (found !== undefined) throw disagreement(found);
  // What cannot be kept is judged again next time.
  const content = JSON.stringify({ builds: builds + 1, chapters: now } satisfies JudgeRecord);
  await writeSealed(cache, file, { sealedFor, content })
    .then(() => dropOldest(cache, 'judged-', mostCourses))
    .catch(() => {});
  return asked.size;
}

function treesOf(chapter: Chapter): ReadonlyMap<string, PlayedTree> {
  return new Map(playedTreesIn(chapter).map((tree) => [hashOf(JSON.stringify(tree)), tree]));
}

function disagreement({ fen, san, verdict }: Disagreement): UserError {
  return new UserError(
    `the two sets of rules that judge each course disagree: ${san} in ${fen} ${verdict}, says the second`,
    'nothing was published; this is a fault in Linewright, so please report it with this message',
  );
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** In bytes: hashes of half a million lines. */
const largest = 32_000_000;

async function readRecord(cache: string, file: string, sealedFor: string): Promise<JudgeRecord> {
  const record = await readSealed(cache, file, { sealedFor, largest });
  if (record === undefined) return { builds: 0, chapters: [] };
  return JSON.parse(record.toString('utf8')) as JudgeRecord;
}
