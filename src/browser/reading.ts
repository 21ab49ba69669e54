import { textRenewed } from '../contract/renewed-text.ts';
import { onBoard } from './board/board-state.ts';
import { wordsOf } from './board/board-words.ts';
import type { CourseBoard } from './board/course-board.ts';
import { addDiagrams } from './diagram-spots.ts';
import { offerFreePlay } from './free/offer.ts';
import { linkMoves } from './link-moves.ts';
import { hashOf, noteAddress } from './reading/address.ts';
import { saidOf } from './reading/comment-of.ts';
import { coveredBy, keepRoomAbove } from './reading/covered.ts';
import { followReading, spotOfHash } from './reading/follow.ts';
import { followAddress } from './reading/follow-address.ts';
import { followLinks } from './reading/follow-links.ts';
import { createHold } from './reading/hold.ts';
import { listenForKeys } from './reading/keys.ts';
import { showPosition } from './reading/show-position.ts';
import { createSteps } from './reading/steps.ts';
import { findWaysOn } from './reading/ways-on.ts';
import { readSpots, type Spot } from './spots.ts';
import { whenIdle } from './when-idle.ts';
import { caption, spoken } from './words.ts';

/** Makes a chapter live: its board follows the text, the moves, the keys and the address. */
export function startReading(board: CourseBoard, article: HTMLElement): void {
  const words = wordsOf(board, 'chapter');
  const spots = readSpots(article);
  const [first] = spots.values();
  if (first === undefined) return;
  linkMoves(spots);
  addDiagrams(article, spots);
  keepRoomAbove(board);
  const hold = createHold();
  let findWays = findWaysOn(spots);
  const waysOn = (spot: Spot) => findWays(spot);
  const steps = createSteps(waysOn);
  const shown = showPosition(first, board, words, waysOn);

  /** The reader asked for this position. */
  function touch(spot: Spot, by: Element): void {
    hold.take(by);
    shown.show(spot);
    const told = spot.home ?? spot;
    const what = told.move === undefined ? caption(spot, words) : spoken(told, words);
    board.say(`${what}. ${saidOf(spot)}`);
  }

  /** @returns whether there is such a step. */
  function step(spot: Spot | undefined): boolean {
    if (spot === undefined) return false;
    const hadFocus = document.activeElement?.closest('.move') ?? null;
    steps.took(shown.spot, spot);
    touch(spot, spot.element);
    if (hadFocus !== null && spot.move !== undefined) spot.element.focus({ preventScroll: true });
    spot.element.scrollIntoView({ block: 'nearest' });
    noteAddress(spot.element.id);
    return true;
  }

  offerFreePlay({ board, article, spots, words, shown: () => shown.spot, go: step });
  listenForKeys((wish) => step(steps.target(wish, shown.spot)));
  onBoard(board, 'course-board-wish', (wish) => {
    step(
      wish.go === 'choice' ? waysOn(shown.spot)[wish.choice] : steps.target(wish.go, shown.spot),
    );
  });
  followLinks(article, spots, (spot, link) => {
    steps.forget();
    touch(spot, link);
  });
  const addressed = followAddress({
    article,
    spots,
    words,
    onSpot: (spot) => touch(spot, spot.element),
    onNone: hold.release,
  });
  if (addressed !== undefined && isFreshVisit()) reach(addressed, () => shown.spot === addressed);
  let following = new AbortController();
  const follow = () => {
    following.abort();
    following = new AbortController();
    followReading(
      article,
      spots,
      () => coveredBy(board),
      (spot) => {
        if (board.held || hold.holds(coveredBy(board))) return;
        hold.release();
        shown.show(spot);
      },
      following.signal,
    );
  };
  whenIdle(() => {
    // It stands below all that the board shows, and would move as that comes.
    board.parentElement?.querySelector('.share')?.removeAttribute('hidden');
    follow();
  });
  addEventListener(textRenewed, () => {
    const before = shown.spot;
    readAgain(article, spots);
    findWays = findWaysOn(spots);
    steps.forget();
    const now = sameSpot(before, spots) ?? spots.values().next().value;
    if (now !== undefined) shown.renew(now);
    follow();
  });
}

/** Whoever holds the spots has those of the text as it is now. */
function readAgain(article: HTMLElement, spots: Map<Element, Spot>): void {
  spots.clear();
  for (const [element, spot] of readSpots(article)) spots.set(element, spot);
  linkMoves(spots);
  addDiagrams(article, spots);
}

/** The spot of the same place; where that is gone, of the last place before it that is still there. */
function sameSpot(before: Spot, spots: ReadonlyMap<Element, Spot>): Spot | undefined {
  for (let spot: Spot | undefined = before; spot !== undefined; spot = spot.parent) {
    const found = spots.get(spot.element) ?? spotOfHash(hashOf(spot.element.id), spots);
    if (found !== undefined) return found;
  }
  return undefined;
}

/** After a reload, or on the way back, the browser restores where one read. */
function isFreshVisit(): boolean {
  const [visit] = performance.getEntriesByType('navigation');
  return !(visit instanceof PerformanceNavigationTiming) || visit.type === 'navigate';
}

/** Scrolls to a position: the browser did so before the board had its place above the text. */
function reach({ element }: Spot, isShown: () => boolean): void {
  const scroll = () => {
    if (isShown()) element.scrollIntoView({ block: 'nearest' });
  };
  scroll();
  addEventListener('load', () => requestAnimationFrame(scroll), { once: true });
}
