import type { Update } from './update-course.ts';

/** Environment variable: compare each update with a fresh one. */
const compareFreshVariable = 'LINEWRIGHT_COMPARE_FRESH';

export function comparesFresh(): boolean {
  return (process.env[compareFreshVariable] ?? '') !== '';
}

/**
 * Compares an update with a fresh one: for tests, and for anyone in doubt.
 * @throws Error with the first difference, which is a fault of this room.
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
