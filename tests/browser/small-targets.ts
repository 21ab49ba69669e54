/**
 * Targets under 24 pixels whose circle of that diameter meets another target or another small
 * one's circle. Links in a sentence or a block of text are the criterion's exception "Inline". Runs in the page.
 */
export function smallTargets(): string[] {
  const least = 24;
  const targets = [
    ...document.querySelectorAll<HTMLElement>('a[href], button, input, select, summary, textarea'),
  ]
    .filter((element) => element.checkVisibility({ visibilityProperty: true }))
    .map((element) => ({ element, box: element.getBoundingClientRect() }))
    .filter(({ box }) => box.width > 1 && box.height > 1);
  const isSmall = (box: DOMRect) => box.width < least - 0.5 || box.height < least - 0.5;
  // The size of a link is set by the line only where words that are no target stand beside it.
  const isInline = (element: Element): boolean => {
    const { display } = getComputedStyle(element);
    if (display !== 'inline' || element.parentElement === null) return false;
    const { childNodes } = element.parentElement;
    const hasWords = [...childNodes].some(
      (node) => node.nodeType === Node.TEXT_NODE && /[\p{L}\p{N}]/u.test(node.textContent ?? ''),
    );
    return hasWords || (childNodes.length === 1 && isInline(element.parentElement));
  };
  const middle = ({ left, top, width, height }: DOMRect) => ({
    x: left + width / 2,
    y: top + height / 2,
  });
  return targets
    .filter(({ element, box }) => isSmall(box) && !isInline(element))
    .filter(({ element, box }) => {
      const { x, y } = middle(box);
      return targets.some((other) => {
        if (other.element === element || other.element.contains(element)) return false;
        if (element.contains(other.element)) return false;
        if (isSmall(other.box)) {
          const there = middle(other.box);
          return Math.hypot(there.x - x, there.y - y) < least;
        }
        const dx = Math.max(other.box.left - x, 0, x - other.box.right);
        const dy = Math.max(other.box.top - y, 0, y - other.box.bottom);
        return Math.hypot(dx, dy) < least / 2;
      });
    })
    .map(({ element, box }) => `${box.width}x${box.height} ${element.outerHTML.slice(0, 120)}`);
}
