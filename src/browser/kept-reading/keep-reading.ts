import { dataOf } from '../../contract/attributes.ts';
import { type KeptReading, readingKey, readKeptReading } from '../../contract/kept-reading.ts';
import { courseElement } from '../hosts.ts';

/** Ms too short to read from one heading to the next. */
const shortest = 3000;
/** Ms after which a reader who has come to no second heading was reading too. */
const aWhile = 30_000;

/**
 * Keeps, for the first page, in which section of a chapter the reader is and which ones were read to their end: those
 * whose heading was seen and, no sooner than one can read, the heading after it or the end of the text. It is written
 * when the page is left.
 */
export function keepReading(article: HTMLElement): void {
  const headings = [...article.querySelectorAll<HTMLElement>(':scope > h2[id]')];
  const chapter = decodeURIComponent(location.pathname.replace(/^.*\/|\.html$/g, ''));
  const { course = '' } = dataOf('course', courseElement());
  const seen = new Map<Element, number>();
  const read = new Set<string>();
  const end = document.querySelector('.bottom');
  const now = () => performance.now();
  const opened = now();

  const watch = new IntersectionObserver((entries) => {
    for (const { target, isIntersecting } of entries) {
      if (!isIntersecting) continue;
      if (!seen.has(target)) seen.set(target, now());
      const index = target === end ? headings.length : headings.indexOf(target as HTMLElement);
      const before = headings[index - 1];
      const since = before && seen.get(before);
      if (before !== undefined && since !== undefined && now() - since >= shortest) {
        read.add(before.id);
      }
    }
  });
  for (const element of [...headings, end]) if (element !== null) watch.observe(element);

  function keep(): void {
    // Someone who only looked in has not stopped here.
    if (read.size === 0 && (scrollY < 200 || now() - opened < aWhile)) return;
    const here = headings.findLast((each) => each.getBoundingClientRect().top < innerHeight / 2);
    const title = (here ?? article.parentElement?.querySelector('h1'))?.textContent?.trim() ?? '';
    const key = readingKey(course);
    try {
      const kept = readKeptReading(localStorage.getItem(key));
      const ids = new Set([...(kept.read[chapter] ?? []), ...read]);
      const reading: KeptReading = {
        last: { chapter, at: here?.id ?? '', title },
        read: {
          ...kept.read,
          // What an edition no longer has is forgotten.
          [chapter]: headings.flatMap(({ id }) => (ids.has(id) ? [id] : [])),
        },
      };
      localStorage.setItem(key, JSON.stringify(reading));
    } catch {
      // A convenience: without storage the first page begins at the beginning.
    }
  }
  addEventListener('pagehide', keep);
  document.addEventListener('visibilitychange', () => {
    if (document.visibilityState === 'hidden') keep();
  });
}
