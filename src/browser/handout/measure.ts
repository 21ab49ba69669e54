/**
 * Chromium can count pages but not say on which an element stands (`target-counter` of CSS Generated Content for
 * Paged Media, which `CSS.supports` claims). So the handout is laid out as it will be on paper, in columns as wide and
 * as high as a page, which the same rules for breaks fill: the number of a column is that of its page
 * (`site/styles/handout.css`).
 */
export function whileMeasured(task: () => void): void {
  const { documentElement: root } = document;
  const { scrollX, scrollY } = window;
  root.classList.add('measuring');
  try {
    task();
  } finally {
    root.classList.remove('measuring');
    scrollTo(scrollX, scrollY);
  }
}

/** The page that an element begins on, from 1, while measured. */
export function pageOf(element: Element, main: HTMLElement): number {
  const [first] = element.getClientRects();
  if (first === undefined) return 1;
  const { left, right, width } = main.getBoundingClientRect();
  const fromStart =
    getComputedStyle(main).direction === 'rtl' ? right - first.right : first.left - left;
  return Math.floor((fromStart + 1) / width) + 1;
}
