import { hashOf } from './reading/address.ts';
import type { Spot } from './spots.ts';
import { numbered } from './words.ts';

/**
 * Makes moves links to themselves, so that their addresses can be copied. A block is one stop of the Tab key, with arrows
 * from move to move, instead of hundreds. A move of Black without its number gets it in its accessible name, since a list
 * of links shows it out of its sentence.
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
