import { beforeFirstAct } from '../first-act.ts';
import { fillsRoom } from '../hosts.ts';
import { isPiecemeal } from '../piecemeal.ts';
import { whenIdle } from '../when-idle.ts';

/** How much of the window's top the board covers: nothing where it stands beside the text. */
export function coveredBy(board: HTMLElement): number {
  const stand = board.parentElement ?? board;
  return fillsRoom(stand) ? Math.max(0, stand.getBoundingClientRect().bottom) : 0;
}

/**
 * Text that is scrolled to must not come to lie under the board: the style sheet keeps that much
 * room above it. It is not `scroll-padding`, since that would also move the page whenever the
 * focus comes to a button of the board.
 */
export function keepRoomAbove(board: HTMLElement): void {
  const stand = board.parentElement ?? board;
  let covered = '0px';
  const set = () => {
    const { height } = stand.getBoundingClientRect();
    const now = fillsRoom(stand) ? `${Math.ceil(height)}px` : '0px';
    // A new value styles the whole page anew.
    if (now !== covered) document.documentElement.style.setProperty('--covered', now);
    covered = now;
  };
  const follow = () => {
    set();
    new ResizeObserver(() => whenIdle(set)).observe(stand);
  };
  // Nothing is scrolled to before the reader's first act, unless by the page's address.
  if (isPiecemeal()) beforeFirstAct(follow);
  else follow();
}
