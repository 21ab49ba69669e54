import { createHash } from 'node:crypto';
import type { PlayedTree } from '../chess/index.ts';
import { coreHash, type Disagreement, judgeInThread } from '../chess/second-judge/index.ts';
import { UserError } from '../diagnostics/index.ts';
import { readSealed, writeSealed } from '../files/index.ts';
import { type Course, playedTrees } from '../model/index.ts';

/** One in so many of the trees that were judged before is judged again, each build others. */
const share = 32;

/** What was judged before, kept between builds. */
interface Judged {
  /** Builds so far. */
  readonly builds: number;
  readonly judged: ReadonlySet<string>;
}

/**
 * Has chess.js judge the lines of a course that are new since the last build, and some of the others,
 * before anything is published.
 * @param folder where it is kept what was judged; what is damaged there is judged anew.
 * @returns how many trees were judged.
 * @throws UserError where the two sets of rules differ.
 */
export async function judgeCourse(
  course: Course,
  folder: string,
  judge: (trees: readonly PlayedTree[]) => Promise<Disagreement | undefined> = judgeInThread,
): Promise<number> {
  const core = await coreHash();
  const file = `judged-${hashOf(course.settings.title).slice(0, 16)}.txt`;
  const { builds, judged } = await readRecord(folder, file);
  const trees = new Map(
    playedTrees(course).map((tree) => [hashOf(core + JSON.stringify(tree)), tree]),
  );
  const asked = [...trees].filter(
    ([hash]) =>
      !judged.has(hash) || Number.parseInt(hash.slice(0, 8), 16) % share === builds % share,
  );
  const found = await judge(asked.map(([, tree]) => tree));
  if (found !== undefined) throw disagreement(found);
  // What cannot be kept is judged again next time.
  const content = [builds + 1, ...trees.keys()].join('\n');
  await writeSealed(folder, file, { sealedFor: file, content }).catch(() => {});
  return asked.length;
}

function disagreement({ fen, san, verdict }: Disagreement): UserError {
  return new UserError(
    `the two sets of rules that judge each course disagree: ${san} in ${fen} ${verdict}, says the second`,
    'nothing was published; this is a fault in Linewright, so please report it with these two lines',
  );
}

function hashOf(text: string): string {
  return createHash('sha256').update(text).digest('hex');
}

/** In bytes: hashes of half a million lines. */
const largest = 32_000_000;

/** The record is the number of builds and the hashes of what was judged, a line each. */
async function readRecord(folder: string, file: string): Promise<Judged> {
  const record = await readSealed(folder, file, { sealedFor: file, largest });
  if (record === undefined) return { builds: 0, judged: new Set() };
  const [builds, ...judged] = record.toString('utf8').split('\n');
  return { builds: Number(builds), judged: new Set(judged) };
}
