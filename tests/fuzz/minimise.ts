import type { FuzzCase } from './case.ts';

/** How many smaller cases are tried for one failure. */
const mostTries = 600;

/**
 * The smallest case found that still fails: delta debugging (Zeller, Hildebrandt: Simplifying and
 * isolating failure-inducing input, 2002) over files, then lines, then words, then characters.
 */
export async function minimise(
  start: FuzzCase,
  fails: (smaller: FuzzCase) => Promise<boolean>,
  tries = mostTries,
): Promise<FuzzCase> {
  let left = tries;
  let best = start;
  const attempt = async (files: FuzzCase['files']) => {
    if (left <= 0) return false;
    left -= 1;
    const smaller = { ...best, files };
    if (!(await fails(smaller))) return false;
    best = smaller;
    return true;
  };
  const names = await reduce(Object.keys(best.files), (kept) =>
    attempt(Object.fromEntries(kept.map((file) => [file, start.files[file] ?? '']))),
  );
  for (const split of [splitLines, splitWords, (text: string) => [...text]]) {
    for (const file of names) {
      await reduce(split(best.files[file] ?? ''), (kept) =>
        attempt({ ...best.files, [file]: kept.join('') }),
      );
    }
  }
  return best;
}

const splitLines = (text: string) => text.split(/(?<=\n)/);
const splitWords = (text: string) => text.split(/(?<=\s)/);

/** Takes parts out of a list, large ones first, as long as what is kept still fails. */
async function reduce<T>(
  list: readonly T[],
  fails: (kept: readonly T[]) => Promise<boolean>,
): Promise<readonly T[]> {
  let kept = list;
  for (
    let size = Math.ceil(kept.length / 2);
    size >= 1;
    size = size > 1 ? Math.ceil(size / 2) : 0
  ) {
    for (let at = 0; at < kept.length; ) {
      const fewer = [...kept.slice(0, at), ...kept.slice(at + size)];
      if (await fails(fewer)) kept = fewer;
      else at += size;
    }
  }
  return kept;
}
