import { dataOf } from '../contract/attributes.ts';
import { hashOf, noteAddress, noteShown, pushAddress, shownBefore, writeNoted } from './address.ts';
import { onBoard } from './board/board-state.ts';
import { wordsOf } from './board/board-words.ts';
import type { CourseBoard } from './board/course-board.ts';
import { beforeFirstAct } from './first-act.ts';
import { followReading, idOfHash, spotOfHash, spotOfLink } from './follow.ts';
import { createHold } from './hold.ts';
import { listenForKeys, type Step } from './keys.ts';
import { lookFor } from './lost-address/lost-address.ts';
import { isPiecemeal } from './piecemeal.ts';
import { beside, endOfLine, readSpots, type Spot, startOfBlock } from './spots.ts';
import { whenIdle } from './when-idle.ts';
import { caption, describe, numbered, otherPlace, spoken } from './words.ts';

/** Makes a chapter live: its board follows the text, the moves, the keys and the address. */
export function startReading(board: CourseBoard, article: HTMLElement): void {
  const words = wordsOf(board, 'chapter');
  const spots = readSpots(article);
  const [first] = spots.values();
  if (first === undefined) return;
  let current: Spot | undefined;
  const hold = createHold();
  /** Ways that were stepped back from, so that a step on takes them again. */
  const cameFrom = new Map<Spot, Spot>();

  function show(spot: Spot): void {
    if (spot === current) return;
    const before = current;
    noteShown(spot.element.id);
    current?.element.removeAttribute('aria-current');
    if (spot.move !== undefined) spot.element.setAttribute('aria-current', 'true');
    current = spot;
    board.show({
      placement: spot.placement,
      view: spot.view,
      marks: spot.marks,
      arrows: spot.arrows,
      lastMove: spot.move,
      turn: spot.move?.color === 'white' || startsWithBlack(spot) ? 'black' : 'white',
      caption: { text: caption(spot, words), href: hashOf(spot.element.id) },
      description: describe(spot.placement, words),
      choices: spot.children.map(numbered),
      also: spot.also.map(({ href, move }) => ({ href, text: otherPlace(href, move, words) })),
      canGoBack: spot.parent !== undefined,
      canGoOn: spot.children.length > 0,
      glide: glideBetween(before, spot),
    });
  }

  /** The reader asked for this position. */
  function touch(spot: Spot, by: Element): void {
    hold.take(by);
    show(spot);
    board.say(spoken(spot, words));
  }

  function step(spot: Spot | undefined): boolean {
    if (spot === undefined) return false;
    const hadFocus = document.activeElement?.closest('.move') ?? null;
    if (current?.parent === spot) cameFrom.set(spot, current);
    touch(spot, spot.element);
    if (hadFocus !== null && spot.move !== undefined) spot.element.focus({ preventScroll: true });
    spot.element.scrollIntoView({ block: 'nearest' });
    noteAddress(spot.element.id);
    return true;
  }

  function target(wish: Step): Spot | undefined {
    const here = current ?? first;
    if (here === undefined) return undefined;
    switch (wish) {
      case 'back':
        return here.parent;
      case 'on':
        return cameFrom.get(here) ?? here.children[0];
      case 'first':
        return startOfBlock(here);
      case 'last':
        return endOfLine(here);
      case 'variation-before':
        return beside(here, -1);
      case 'variation-after':
        return beside(here, 1);
    }
  }

  listenForKeys((wish) => step(target(wish)));
  onBoard(board, 'course-board-wish', (wish) => {
    step(wish.go === 'choice' ? current?.children[wish.choice] : target(wish.go));
  });

  article.addEventListener('click', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
    const spot = link === null ? undefined : spotOfLink(link, spots);
    if (link === null || spot === undefined) return;
    event.preventDefault();
    cameFrom.clear();
    writeNoted();
    const jumps = link !== spot.element;
    if (jumps) pushAddress(spot.element.id);
    touch(spot, link);
    if (!jumps) noteAddress(spot.element.id);
  });

  /** @returns the element of the position where the reader was, else of the one in the address. */
  function showAddress(before = shownBefore()): HTMLElement | undefined {
    const hash = before === undefined ? location.hash : hashOf(before);
    const spot = spotOfHash(hash, spots);
    document.querySelector('.notice')?.remove();
    if (spot === undefined) {
      hold.release();
      findLost(idOfHash(hash));
    } else touch(spot, spot.element);
    return spot?.element;
  }

  function findLost(id: string): void {
    const { finder } = dataOf('page', article.closest<HTMLElement>('[data-finder]') ?? article);
    if (id === '' || finder === undefined || document.getElementById(id) !== null) return;
    const showFound = (spot: Spot) => {
      touch(spot, spot.element);
      // Not at an edge: a notice may lie over it.
      spot.element.scrollIntoView({ block: 'center' });
    };
    lookFor({ id, article, spots, words, show: showFound }, finder);
  }
  // A link to a place in this page, as those below the board, leaves the page as it is.
  addEventListener('click', writeNoted, { capture: true });
  addEventListener('popstate', () => showAddress());

  keepRoomAbove(board);
  const before = shownBefore();
  show(first);
  const addressed = showAddress(before);
  // The browser scrolled there before the board had its place above the text.
  if (addressed !== undefined && isFreshVisit()) {
    const reach = () => {
      if (current?.element === addressed) addressed.scrollIntoView({ block: 'nearest' });
    };
    reach();
    addEventListener('load', () => requestAnimationFrame(reach), { once: true });
  }
  whenIdle(() =>
    followReading(
      article,
      spots,
      () => coveredBy(board),
      (spot) => {
        if (hold.holds(coveredBy(board))) return;
        hold.release();
        show(spot);
      },
    ),
  );
}

/** After a reload, or on the way back, the browser restores where one read. */
function isFreshVisit(): boolean {
  const [visit] = performance.getEntriesByType('navigation');
  return !(visit instanceof PerformanceNavigationTiming) || visit.type === 'navigate';
}

function startsWithBlack({ move, children }: Spot): boolean {
  return move === undefined && children[0]?.move?.color === 'black';
}

/** The piece that moves between two neighbours, forwards or back. */
function glideBetween(before: Spot | undefined, spot: Spot) {
  if (before === undefined) return undefined;
  if (spot.parent === before) return spot.move;
  return before.parent === spot && before.move
    ? { from: before.move.to, to: before.move.from }
    : undefined;
}

/** How much of the window's top the board covers: nothing where it stands beside the text. */
function coveredBy(board: HTMLElement): number {
  const stand = board.parentElement ?? board;
  const { left, width, bottom } = stand.getBoundingClientRect();
  const above = width >= document.documentElement.clientWidth - 1 && left <= 0;
  return above ? Math.max(0, bottom) : 0;
}

/**
 * Text that is scrolled to must not come to lie under the board: the style sheet keeps that much
 * room above it. It is not `scroll-padding`, since that would also move the page whenever the
 * focus comes to a button of the board.
 */
function keepRoomAbove(board: HTMLElement): void {
  const stand = board.parentElement ?? board;
  let covered = '0px';
  const set = () => {
    const { width, height } = stand.getBoundingClientRect();
    const above = width >= document.documentElement.clientWidth - 1;
    const now = above ? `${Math.ceil(height)}px` : '0px';
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
