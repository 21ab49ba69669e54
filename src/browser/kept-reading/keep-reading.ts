import { dataOf } from '../../contract/attributes.ts';
import { type KeptReading, readingKey, readKeptReading } from '../../contract/kept-reading.ts';

/**
 * Keeps, for the first page, in which section of a chapter the reader is and which ones were read to their end: those
 * whose heading was seen and then the heading after it, or the end of the text. It is written when the page is left.
 */
export function keepReading(article: HTMLElement): void {
  const headings = [...article.querySelectorAll<HTMLElement>(':scope > h2[id]')];
  const chapter = decodeURIComponent(location.pathname.replace(/^.*\/|\.html$/g, ''));
  const { course = '' } = dataOf('course', document.body);
  const seen = new Set<Element>();
  const read = new Set<string>();
  const end = document.querySelector('.bottom');

  const watch = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) {
      if (!isIntersecting) continue;
      seen.add(target);
      const index = target === end ? headings.length : headings.indexOf(target as HTMLElement);
      const before = headings[index - 1];
      if (before !== undefined && seen.has(before)) read.add(before.id);
    }
  });
  for (const element of [...headings, end]) if (element !== null) watch.observe(element);

  function keep(): void {
    // Someone who only looked in has not stopped here.
    if (scrollY < 200 && read.size === 0) return;
    const here = headings.findLast((each) => each.getBoundingClientRect().top < innerHeight / 2);
    const title = (here ?? document.querySelector('h1'))?.textContent?.trim() ?? '';
    const key = readingKey(course);
    try {
      const kept = readKeptReading(localStorage.getItem(key));
      const ids = new Set([...(kept.read[chapter] ?? []), ...read]);
      const now: KeptReading = {
        last: { chapter, at: here?.id ?? '', title },
        read: {
          ...kept.read,
          // What an edition no longer has is forgotten.
          [chapter]: headings.flatMap(({ id }) => (ids.has(id) ? [id] : [])),
        },
      };
      localStorage.setItem(key, JSON.stringify(now));
    } catch {
      // A convenience: where nothing may be kept, the first page begins at the beginning.
    }
  }
  addEventListener('pagehide', keep);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keep();
  });
}
