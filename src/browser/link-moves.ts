import { hashOf } from './reading/address.ts';
import type { Spot } from './spots.ts';
import { numbered } from './words.ts';

/**
 * Makes the moves links to themselves, so that their addresses can be copied. A block of them is one stop of the
 * Tab key, and arrows go from move to move: else hundreds of stops lay before whatever comes next. Those whose
 * number stands before White's move alone get it in their name: out of their sentence, as in a list of links, nobody
 * could tell what they are.
 */
export function linkMoves(spots: ReadonlyMap<Element, Spot>): void {
  for (const [element, spot] of spots) {
    if (spot.move === undefined) continue;
    if (spot.parent?.move !== undefined) element.setAttribute('tabindex', '-1');
    element.setAttribute('href', hashOf(element.id));
    if (/^\d/.test(element.textContent ?? '')) continue;
    element.setAttribute('aria-label', numbered(spot));
  }
}

/** The Tab key comes to this move of its block, and to no other. */
export function makeStop(element: Element): void {
  const block = element.closest('.moves');
  for (const other of block?.querySelectorAll('.move:not([tabindex="-1"])') ?? []) {
    other.setAttribute('tabindex', '-1');
  }
  element.removeAttribute('tabindex');
}
