import { beforeFirstAct } from './first-act.ts';
import { whenIdle } from './when-idle.ts';

/** The class that `begin.ts` gives the root: what is far from the window waits. */
export const piecemeal = 'piecemeal';
/** Milliseconds in which the page comes up: the board is drawn, the first screen painted. */
const start = 1500;

export function isPiecemeal(): boolean {
  return document.documentElement.classList.contains(piecemeal);
}

/**
 * Has the text that waits laid out: after the start a piece each time the page is idle, and all that
 * is left before the reader's first act, in time for its height to be right wherever he goes.
 */
export function layOutInTime(): void {
  beforeFirstAct(layOutAll);
  setTimeout(() => whenIdle(() => layOut(waitingPieces())), start);
}

function layOutAll(): void {
  document.documentElement.classList.remove(piecemeal);
}

function waitingPieces(): HTMLElement[] {
  return [...document.querySelectorAll<HTMLElement>('article > *, .moves > *')].filter(
    (piece) => getComputedStyle(piece).contentVisibility === 'auto',
  );
}

function layOut(pieces: HTMLElement[]): void {
  if (!isPiecemeal()) return;
  const piece = pieces.shift();
  if (piece === undefined) {
    layOutAll();
    return;
  }
  piece.style.contentVisibility = 'visible';
  // Now, not with the pieces after it in the next frame.
  piece.getBoundingClientRect();
  whenIdle(() => layOut(pieces));
}
