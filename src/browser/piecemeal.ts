import { beforeFirstAct } from './first-act.ts';

/** The class that `site/piecemeal.ts` gives the root: what is far from the window waits. */
const piecemeal = 'piecemeal';

export function isPiecemeal(): boolean {
  return document.documentElement.classList.contains(piecemeal);
}

/**
 * Has the whole text laid out before the reader's first act, in time for its height to be right
 * wherever he goes. Until then a slow phone has only the first windows of a long chapter to do.
 */
export function layOutInTime(): void {
  beforeFirstAct(() => document.documentElement.classList.remove(piecemeal));
}
