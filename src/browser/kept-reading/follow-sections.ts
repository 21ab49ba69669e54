import { coveredBy } from '../reading/covered.ts';
import { idOfHash } from '../reading/follow.ts';

/**
 * Marks the section being read in the lists of sections, and folds a list after a choice. The folded list floats over the
 * text when its own place is out of sight.
 */
export function followSections(article: HTMLElement): void {
  const links = [...document.querySelectorAll<HTMLAnchorElement>('.sections a')];
  const headings = [...article.querySelectorAll<HTMLElement>(':scope > h2[id]')];
  const place = document.getElementById('sections');
  const folded = place?.querySelector('details');
  const end = document.querySelector('.chapter-end');
  const board = document.querySelector<HTMLElement>('.beside course-board');
  if (links.length === 0 || headings.length === 0 || !place || !folded) return;
  let current: HTMLElement | undefined;
  const coveredTop = () => (board === null ? 0 : coveredBy(board));

  function mark(): void {
    const covered = coveredTop();
    const line = covered + (innerHeight - covered) / 3;
    const now = headings.findLast((heading) => heading.getBoundingClientRect().top <= line);
    if (now === current) return;
    current = now;
    for (const link of links) {
      if (idOfHash(link.hash) === now?.id) {
        link.setAttribute('aria-current', 'true');
      } else link.removeAttribute('aria-current');
    }
  }

  function float(): void {
    if (!place || !folded) return;
    // Where the list stands beside the text, the folded one has no box.
    const isPast = folded.getClientRects().length > 0 && place.getBoundingClientRect().bottom < 0;
    const isAtEnd = (end?.getBoundingClientRect().top ?? Infinity) < innerHeight;
    const floats = isPast && !isAtEnd;
    if (floats === folded.classList.contains('floating')) return;
    // Its place stays: no text moves.
    place.style.minHeight = floats ? `${place.offsetHeight}px` : '';
    folded.classList.toggle('floating', floats);
    if (floats) folded.open = false;
  }

  let waiting = false;
  const follow = () => {
    if (waiting) return;
    waiting = true;
    requestAnimationFrame(() => {
      waiting = false;
      mark();
      float();
    });
  };
  addEventListener('scroll', follow, { passive: true });
  addEventListener('resize', follow);
  mark();
  float();
  for (const link of links) {
    link.addEventListener('click', () => link.closest('details')?.removeAttribute('open'));
  }
  document.addEventListener('click', ({ target }) => {
    const isOutside = !(target instanceof Node && folded.contains(target));
    if (isOutside && folded.classList.contains('floating')) folded.open = false;
  });
}
