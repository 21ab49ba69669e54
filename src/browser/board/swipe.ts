/** Least pixels of a swipe. */
const least = 40;

/**
 * Tells when a finger swipes across what `selector` finds in an element: to the left is on, as a page is turned. The style
 * sheet leaves the element's vertical panning and its zoom to the browser, so that the page
 * scrolls under the finger as everywhere.
 */
export function listenForSwipes(
  element: HTMLElement,
  selector: string,
  onSwipe: (way: 'back' | 'on') => void,
): void {
  let start: { id: number; x: number; y: number } | undefined;
  element.addEventListener('pointerdown', (event) => {
    const { pointerId: id, pointerType, isPrimary, target, x, y } = event;
    // A finger on a piece that may be moved moves it.
    const there =
      target instanceof Element && target.closest('.movable') === null && target.closest(selector);
    // A second finger makes it a zoom.
    start =
      there !== null && there !== false && pointerType === 'touch' && isPrimary
        ? { id, x, y }
        : undefined;
  });
  element.addEventListener('pointerup', ({ pointerId, x, y }) => {
    const from = start;
    start = undefined;
    if (from?.id !== pointerId) return;
    const [dx, dy] = [x - from.x, y - from.y];
    if (Math.abs(dx) >= least && Math.abs(dx) > 2 * Math.abs(dy)) onSwipe(dx < 0 ? 'on' : 'back');
  });
  element.addEventListener('pointercancel', () => {
    start = undefined;
  });
}
