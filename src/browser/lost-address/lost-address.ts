import type { ChapterWords } from '../../contract/words.ts';
import type { Spot } from '../spots.ts';

/** An address that nothing on the page has as its id, and what is needed to find what it names. */
export interface LostAddress {
  readonly id: string;
  readonly article: HTMLElement;
  readonly spots: ReadonlyMap<Element, Spot>;
  readonly words: ChapterWords;
  /** Shows a position in the place of the one that the address names. */
  readonly show: (spot: Spot) => void;
}

const event = 'course-lost-address';

/**
 * Looks for what an address names. Seldom asked for, so the script that does it (`main.ts`) is loaded only then.
 * @param finder address of that script.
 */
export function lookFor(lost: LostAddress, finder: string): void {
  const ask = () => dispatchEvent(new CustomEvent<LostAddress>(event, { detail: lost }));
  const script = document.createElement('script');
  script.src = finder;
  script.addEventListener('load', () => {
    ask();
    script.remove();
  });
  document.head.append(script);
}

/** Answers the next address that is asked for. */
export function answerOnce(answer: (lost: LostAddress) => void): void {
  addEventListener(event, (asked) => answer((asked as CustomEvent<LostAddress>).detail), {
    once: true,
  });
}
