import { hashOf } from './reading/address.ts';

/** Links to the page in other languages lead to the place that is read: what stands there has the same address. */
export function followLanguage(links: Iterable<HTMLAnchorElement>): void {
  for (const link of links) {
    const lead = () => {
      const move = document.querySelector('article [aria-current][id]');
      link.hash = move ? hashOf(move.id) : location.hash;
      link.search = location.search;
    };
    link.addEventListener('pointerdown', lead);
    link.addEventListener('click', lead);
  }
}
