import { dataOf } from '../../contract/attributes.ts';
import type { ChapterWords } from '../../contract/words.ts';
import { lookFor } from '../lost-address/lost-address.ts';
import type { Spot } from '../spots.ts';
import { hashOf, shownBefore } from './address.ts';
import { idOfHash, spotOfHash } from './follow.ts';

export interface AddressedText {
  readonly article: HTMLElement;
  readonly spots: ReadonlyMap<Element, Spot>;
  readonly words: ChapterWords;
  readonly onSpot: (spot: Spot) => void;
  /** The address names no position of the text. */
  readonly onNone: () => void;
}

/**
 * Calls for the position where the reader left this page, or else for the one that the address names;
 * again at each step through the browser's history.
 * @returns the position at first.
 */
export function followAddress({
  article,
  spots,
  words,
  onSpot,
  onNone,
}: AddressedText): Spot | undefined {
  function showAddress(): Spot | undefined {
    const before = shownBefore();
    const hash = before === undefined ? location.hash : hashOf(before);
    const spot = spotOfHash(hash, spots);
    document.querySelector('.notice')?.remove();
    if (spot === undefined) {
      onNone();
      findLost(idOfHash(hash));
    } else onSpot(spot);
    return spot;
  }

  function findLost(id: string): void {
    const { finder } = dataOf('page', article.closest<HTMLElement>('[data-finder]') ?? article);
    if (id === '' || finder === undefined || document.getElementById(id) !== null) return;
    const show = (spot: Spot) => {
      onSpot(spot);
      // Not at an edge: a notice may lie over it.
      spot.element.scrollIntoView({ block: 'center' });
    };
    lookFor({ id, article, spots, words, show }, finder);
  }

  addEventListener('popstate', showAddress);
  return showAddress();
}
