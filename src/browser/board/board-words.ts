import type { Color, PieceKind } from '../../chess/types.ts';

/** What a board says in the page's language; pages send it as data (`data-words`). */
export interface BoardWords {
  readonly back: string;
  readonly on: string;
  readonly or: string;
  readonly next: string;
  readonly also: string;
  readonly turn: string;
  readonly fold: string;
  readonly unfold: string;
  /** Names the squares of a board that is played on, and tells how keys work there. */
  readonly squares: string;
  readonly promote: string;
  readonly white: string;
  readonly black: string;
  readonly letters: Readonly<Record<PieceKind, string>>;
  readonly pieces: Readonly<Record<PieceKind, string>>;
}

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
export function wordsOf<Words>(element: Element): Words {
  const holder = element.closest<HTMLElement>('[data-words]');
  if (holder === null) return {} as Words;
  const words = read.get(holder) ?? JSON.parse(holder.dataset.words ?? '{}');
  read.set(holder, words);
  return words as Words;
}
