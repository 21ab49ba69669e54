import { hashOf } from './reading/address.ts';
import type { Spot } from './spots.ts';
import { numbered } from './words.ts';

/**
 * Makes the moves links to themselves, so that keys come to them and their addresses can be copied. Those
 * whose number stands before White's move alone get it in their name: out of their sentence, as in a list of links,
 * nobody could tell what they are.
 */
export function linkMoves(spots: ReadonlyMap<Element, Spot>): void {
  for (const [element, spot] of spots) {
    if (spot.move === undefined) continue;
    element.setAttribute('href', hashOf(element.id));
    if (/^\d/.test(element.textContent ?? '')) continue;
    element.setAttribute('aria-label', numbered(spot));
  }
}
