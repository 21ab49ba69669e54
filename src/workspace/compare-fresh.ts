import type { Update } from './update-course.ts';

/** Name of the environment variable that has each update compared with one for which nothing was kept. */
const compareFreshVariable = 'LINEWRIGHT_COMPARE_FRESH';

export function comparesFresh(): boolean {
  return (process.env[compareFreshVariable] ?? '') !== '';
}

/**
 * Compares what was kept with what a fresh run finds: a switch for tests, and for whoever doubts.
 * @throws Error with the first difference: it is a fault of this room.
 */
export function compareFresh(kept: Update, fresh: Update): void {
  compare('findings', kept.current.diagnostics, fresh.current.diagnostics);
  for (const [index, chapter] of fresh.chapters.entries()) {
    const { live: _, ...there } = chapter;
    const { live: __, ...here } = kept.chapters[index] ?? chapter;
    compare(`what is kept of ${chapter.file}`, here, there);
  }
  compare('the model', kept.current.course(), fresh.current.course());
}

function compare(what: string, kept: unknown, fresh: unknown): void {
  const here = JSON.stringify(kept) ?? '';
  const there = JSON.stringify(fresh) ?? '';
  if (here === there) return;
  let at = 0;
  while (here[at] === there[at]) at++;
  const from = Math.max(0, at - 80);
  throw new Error(
    `${what} differ from a fresh run:\n  kept:  …${here.slice(from, at + 160)}\n  fresh: …${there.slice(from, at + 160)}`,
  );
}
