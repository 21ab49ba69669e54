import { dataOf } from '../../contract/attributes.ts';
import { make } from '../element.ts';

/** A link within the handout, and the element for its page number. */
export interface Reference {
  readonly link: Element;
  readonly target: Element;
  readonly note: HTMLElement;
  /** A line of the contents has the number alone, at its end. */
  readonly isContents: boolean;
  /** The note stands within the brackets that tell the place already. */
  readonly isWithin: boolean;
}

/** The links that help on paper; notes stand below their chapter, and a move is where it is. */
export function findReferences(main: HTMLElement): Reference[] {
  const links = main.querySelectorAll(
    'a[href^="#"]:not([data-footnote-ref], [data-footnote-backref])',
  );
  const diagrams = new Map(
    [...main.querySelectorAll('.diagram-number')].map((number) => [
      /\d+/.exec(number.textContent ?? '')?.[0] ?? '',
      number,
    ]),
  );
  return [...links].flatMap((link): Reference[] => {
    const id = decodeURIComponent((link.getAttribute('href') ?? '').slice(1));
    const target = document.getElementById(id);
    if (target === null) return [];
    const isContents = link.closest('.handout-contents') !== null;
    const next = link.nextElementSibling;
    const place = next?.matches('.place') && link.nextSibling === next ? next : undefined;
    const { diagram } = place instanceof HTMLElement ? dataOf('place', place) : {};
    const shown = diagram === undefined ? undefined : diagrams.get(diagram);
    const note = make('span', isContents ? 'page-number' : 'place page-of');
    if (place?.lastChild instanceof Text && place.lastChild.data.endsWith(')')) {
      const { lastChild } = place;
      lastChild.splitText(lastChild.length - 1);
      lastChild.after(note);
    } else if (isContents) link.append(note);
    else link.after(note);
    return [{ link, target: shown ?? target, note, isContents, isWithin: place !== undefined }];
  });
}

/** @returns whether the words changed. */
export function tellPage({ note, isContents, isWithin }: Reference, words: string, number: string) {
  const told = isContents ? number : words === '' ? '' : isWithin ? `, ${words}` : ` (${words})`;
  if (note.textContent === told) return false;
  note.textContent = told;
  return true;
}
