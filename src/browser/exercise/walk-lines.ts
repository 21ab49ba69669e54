import type { Spot } from '../spots.ts';

export interface Walk {
  /** The positions of the lines by their elements. */
  readonly spots: ReadonlyMap<Element, Spot>;
  /** The position a step away from the one that is shown. */
  readonly neighbour: (way: 'back' | 'on') => Spot | undefined;
  readonly onSpot: (spot: Spot) => void;
}

/** Lets the reader walk along the lines in an element: by their moves, and by the arrow keys. */
export function walkLines(element: HTMLElement, { spots, neighbour, onSpot }: Walk): void {
  element.addEventListener('click', (event) => {
    const link = event.target instanceof Element ? event.target.closest('.move') : null;
    const spot = link === null ? undefined : spots.get(link);
    if (spot === undefined) return;
    event.preventDefault();
    onSpot(spot);
  });
  element.addEventListener('keydown', (event) => {
    if (event.altKey || event.ctrlKey || event.metaKey || event.shiftKey) return;
    if (event.key !== 'ArrowLeft' && event.key !== 'ArrowRight') return;
    event.preventDefault();
    const next = neighbour(event.key === 'ArrowLeft' ? 'back' : 'on');
    if (next === undefined) return;
    const hadFocus = document.activeElement?.matches('.move');
    onSpot(next);
    if (hadFocus && next.move !== undefined) next.element.focus();
  });
}
