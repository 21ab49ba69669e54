import { idOfHash } from './follow.ts';

/** Marks in the lists of sections the one that is read, and folds a list away when one was chosen. */
export function followSections(article: Element, coveredTop: () => number): void {
  const links = [...document.querySelectorAll<HTMLAnchorElement>('.sections a')];
  const headings = [...article.querySelectorAll<HTMLElement>(':scope > h2[id]')];
  if (links.length === 0 || headings.length === 0) return;
  let current: HTMLElement | undefined;

  function mark(): void {
    const line = coveredTop() + (innerHeight - coveredTop()) / 3;
    const now = headings.findLast((heading) => heading.getBoundingClientRect().top <= line);
    if (now === current) return;
    current = now;
    for (const link of links) {
      if (idOfHash(link.hash) === now?.id) {
        link.setAttribute('aria-current', 'true');
      } else link.removeAttribute('aria-current');
    }
  }

  let waiting = false;
  addEventListener(
    'scroll',
    () => {
      if (waiting) return;
      waiting = true;
      requestAnimationFrame(() => {
        waiting = false;
        mark();
      });
    },
    { passive: true },
  );
  mark();
  for (const link of links) {
    link.addEventListener('click', () => link.closest('details')?.removeAttribute('open'));
  }
}
