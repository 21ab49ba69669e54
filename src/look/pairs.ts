/**
 * The pairs of colours that meet on a page, a board or a picture, with the contrast that each needs. A new use of two
 * colours in a style sheet is a line here.
 */
import { type ColourName, type Mode, modes } from './defaults.ts';

/** What a pair is to the reader: text, a piece, or what is told by more than its colour. */
export type PairKind = 'text' | 'pieces' | 'signs' | 'squares';

/** The ratio that each needs, and who asks for it. */
export const asked: Readonly<
  Record<PairKind, { readonly ratio: number; readonly source: string }>
> = {
  text: { ratio: 4.5, source: 'WCAG 2.2 asks for 4.5 : 1 (1.4.3)' },
  pieces: { ratio: 3, source: 'WCAG 2.2 asks for 3 : 1 (1.4.11)' },
  signs: { ratio: 3, source: 'WCAG 2.2 asks for 3 : 1 (1.4.11)' },
  // No criterion: coordinates tell squares too. Ours are 1.5; below 1.25 a board looks like one sheet.
  squares: { ratio: 1.25, source: 'a board needs 1.25 : 1 to be seen as one' },
};

export interface Pair {
  readonly ink: ColourName;
  /** How much of the ink there is, where it is mixed with the ground. */
  readonly share?: number;
  readonly ground: ColourName;
  readonly kind: PairKind;
  /** Large text of this pair alone: 3 : 1 is enough. */
  readonly modes: readonly Mode[];
  /** What is hard to see where it fails. */
  readonly shows: string;
}

const screens: readonly Mode[] = ['light', 'dark'];

function pair(
  ink: ColourName,
  ground: ColourName,
  kind: PairKind,
  shows: string,
  more: Partial<Pick<Pair, 'share' | 'modes'>> = {},
): Pair {
  return { ink, ground, kind, shows, modes, ...more };
}

const squares = ['board-light-square', 'board-dark-square'] as const;

export const pairs: readonly Pair[] = [
  pair('ink', 'paper', 'text', 'text'),
  pair('ink', 'wash', 'text', 'text beside the board', { modes: screens }),
  pair('ink', 'paper', 'text', 'the paler text of variations', { share: 0.78 }),
  pair('quiet', 'paper', 'text', 'quiet text'),
  pair('quiet', 'wash', 'text', 'quiet text beside the board', { modes: screens }),
  pair('on-accent', 'accent', 'text', 'the main button', { modes: screens }),
  pair('on-cover', 'cover', 'text', 'text on the cover', { modes: screens }),
  pair('on-cover-quiet', 'cover', 'text', 'quiet text on the cover', { modes: screens }),
  pair('on-label', 'label', 'text', 'the button on the cover', { modes: screens }),
  pair('board-coordinate', 'paper', 'text', 'coordinates of boards'),
  pair('board-coordinate', 'wash', 'text', 'coordinates of the board beside the text', {
    modes: screens,
  }),
  pair('accent', 'paper', 'signs', 'focus, links’ lines and signs'),
  pair('accent', 'wash', 'signs', 'focus and signs beside the board', { modes: screens }),
  pair('edge', 'paper', 'signs', 'edges of buttons and fields'),
  pair('edge', 'wash', 'signs', 'edges of buttons beside the board', { modes: screens }),
  pair('label', 'cover', 'signs', 'the button on the cover', { modes: screens }),
  pair('board-black-piece', 'board-white-piece', 'pieces', 'white pieces’ outlines'),
  ...squares.flatMap((square) => [
    pair('board-black-piece', square, 'pieces', 'pieces'),
    pair('board-last-move', square, 'signs', 'the last move'),
    pair('board-mark', square, 'signs', 'marked squares'),
    pair('board-plan', square, 'signs', 'arrows of plans'),
    pair('board-threat', square, 'signs', 'arrows of threats'),
    pair('board-guard', square, 'signs', 'arrows of guards'),
  ]),
  pair('board-dark-square', 'board-light-square', 'squares', 'the squares'),
];
