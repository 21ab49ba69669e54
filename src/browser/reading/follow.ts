import { dataOf } from '../../contract/attributes.ts';
import type { Spot } from '../spots.ts';

/** A piece of text and the position that it speaks of. */
interface Stop {
  readonly element: Element;
  readonly spot: Spot;
}

/** Where in the free height of the window one reads, from its top. */
const readingLine = 0.3;

/**
 * Calls `onRead` with the position that the paragraph being read speaks of, whenever that changes
 * by scrolling, until `signal` ends it. `coveredTop` says how much of the window's top the board covers.
 */
export function followReading(
  article: Element,
  spots: ReadonlyMap<Element, Spot>,
  coveredTop: () => number,
  onRead: (spot: Spot) => void,
  signal: AbortSignal,
): void {
  const stops = findStops(article, spots);
  const visible = new Set<Element>();
  const observer = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) {
      if (isIntersecting) visible.add(target);
      else visible.delete(target);
    }
    read();
  });
  for (const { element } of stops) observer.observe(element);
  signal.addEventListener('abort', () => observer.disconnect());

  let waiting = false;
  addEventListener(
    'scroll',
    () => {
      if (waiting) return;
      waiting = true;
      requestAnimationFrame(() => {
        waiting = false;
        read();
      });
    },
    { passive: true, signal },
  );

  function read(): void {
    const line = lineInWindow(coveredTop());
    let current: Stop | undefined;
    for (const stop of stops) {
      if (!visible.has(stop.element)) continue;
      if (current !== undefined && stop.element.getBoundingClientRect().top > line) break;
      current = stop;
    }
    if (current !== undefined) onRead(current.spot);
  }
}

/** The height at which one reads; near the end of the page it sinks, so that all text is reached. */
function lineInWindow(covered: number): number {
  const free = innerHeight - covered;
  const left = document.documentElement.scrollHeight - scrollY - innerHeight;
  const sinking = 1 - Math.min(1, Math.max(0, left / (free * (1 - readingLine))));
  return covered + free * (readingLine + (1 - readingLine) * sinking);
}

/** Paragraphs, items, figures and headings in order; one without moves speaks of the last shown. */
function findStops(article: Element, spots: ReadonlyMap<Element, Spot>): Stop[] {
  const stops: Stop[] = [];
  let [last] = spots.values();
  for (const element of article.querySelectorAll('p, li, figure, h2, h3, h4, table, pre')) {
    if (element.querySelector('p, li, figure') !== null) continue;
    last = spokenOf(element, spots) ?? last;
    if (last !== undefined) stops.push({ element, spot: last });
  }
  return stops;
}

function spokenOf(element: Element, spots: ReadonlyMap<Element, Spot>): Spot | undefined {
  const own = spots.get(element);
  if (own !== undefined) return own;
  const { at } = element instanceof HTMLElement ? dataOf('text', element) : {};
  const named = at === undefined ? null : document.getElementById(at);
  if (named !== null) return spots.get(named);
  const moves = element.querySelectorAll(':scope > .move');
  const move = moves[moves.length - 1];
  return move && spots.get(move);
}

/** The position that a link within the page leads to. */
export function spotOfLink(link: Element, spots: ReadonlyMap<Element, Spot>): Spot | undefined {
  const href = link.getAttribute('href') ?? '';
  return href.startsWith('#') ? spotOfHash(href, spots) : undefined;
}

/** The position that a `#…` names. */
export function spotOfHash(hash: string, spots: ReadonlyMap<Element, Spot>): Spot | undefined {
  const target = document.getElementById(idOfHash(hash));
  return target === null ? undefined : spots.get(target);
}

/** The id that a `#…` names; empty where there is none. */
export function idOfHash(hash: string): string {
  return decode(hash.slice(1));
}

function decode(text: string): string {
  try {
    return decodeURIComponent(text);
  } catch {
    return text;
  }
}
