import type { Spot } from '../spots.ts';
import { noteAddress, pushAddress, writeNoted } from './address.ts';
import { spotOfLink } from './follow.ts';

/** Calls `onSpot` when a link of the text to a position is clicked: a move itself, or from elsewhere. */
export function followLinks(
  article: HTMLElement,
  spots: ReadonlyMap<Element, Spot>,
  onSpot: (spot: Spot, link: Element) => void,
): void {
  article.addEventListener('click', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    const link = event.target instanceof Element ? event.target.closest('a[href]') : null;
    if (link === null) return;
    const diagram = link.matches('.still') ? link.closest('figure') : null;
    const spot = (diagram && spots.get(diagram)) ?? spotOfLink(link, spots);
    if (spot === undefined) return;
    event.preventDefault();
    writeNoted();
    const jumps = link !== spot.element;
    if (jumps) pushAddress(spot.element.id);
    onSpot(spot, link);
    if (!jumps) noteAddress(spot.element.id);
  });
  // A link to a place in this page, as those below the board, leaves the page as it is.
  addEventListener('click', writeNoted, { capture: true });
}
