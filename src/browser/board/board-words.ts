import type { Color, PieceKind } from '../../chess/types.ts';
import { dataOf } from '../../contract/attributes.ts';
import type { BoardWords, PageWords } from '../../contract/words.ts';

/** `e4, White knight`, or only `e4`. */
export function squareInWords(
  square: string,
  piece: { readonly color: Color; readonly kind: PieceKind } | undefined,
  words: BoardWords,
): string {
  return piece === undefined
    ? square
    : `${square}, ${words[piece.color]} ${words.pieces[piece.kind]}`;
}

/** By the element that holds them: all boards of a page share theirs. */
const read = new WeakMap<Element, unknown>();

/** The words that a page sends: of the element itself, else of what it stands in. */
export function wordsOf<Kind extends keyof PageWords>(
  element: Element,
  _kind: Kind,
): PageWords[Kind] {
  const holder = element.closest<HTMLElement>('[data-words]');
  if (holder === null) return {} as PageWords[Kind];
  const words = read.get(holder) ?? JSON.parse(dataOf('page', holder).words ?? '{}');
  read.set(holder, words);
  return words as PageWords[Kind];
}
