import type { Color, Piece, PieceKind, PlayedMove, Square } from '../../chess/types.ts';
import type { BoardPicture } from '../../draw/picture.ts';
import type { Glide } from './draw-on.ts';

export interface BoardMove {
  /** As the page prints it, in the letters of its language. */
  readonly san: string;
  readonly from: Square;
  readonly to: Square;
  readonly promotion?: PieceKind | undefined;
}

/** What a board shows; only with the parts that `data-parts` names. */
export interface BoardState extends BoardPicture {
  readonly view: Color;
  /** For readers who do not see the board: its pieces in words. */
  readonly description: string;
  /** `Position.key` of what it shows, where the reader may play freely from there (`free/`). */
  readonly key?: string | undefined;
  /** Draws what lies over the board, whenever that is drawn. */
  readonly drawOver?: ((svg: Element, view: Color) => void) | undefined;
  /** Moves that the reader may play; without them the board is still. */
  readonly legal?: readonly BoardMove[] | undefined;
  /** The caption, and where in the page it leads. */
  readonly caption?: { readonly text: string; readonly href: string } | undefined;
  /** What the author says of the move that led here; it is moved into the board. */
  readonly comment?: DocumentFragment | undefined;
  /** The moves from here, the main one first. */
  readonly choices?: readonly string[] | undefined;
  /** Links to other places where this position is reached. */
  readonly also?: readonly { readonly text: string; readonly href: string }[] | undefined;
  /** Whether there is a step back or on. */
  readonly canGoBack?: boolean | undefined;
  readonly canGoOn?: boolean | undefined;
  /** A piece glides from the first square to the second: a step of one move, either way. */
  readonly glide?: Glide | undefined;
}

/** A request of the reader; `choice` counts from 0. */
export type BoardWish =
  | { readonly go: 'back' | 'on' }
  | { readonly go: 'choice'; readonly choice: number };

/** An illegal try; without `to`, a piece of the side not to move. */
export interface BoardRefusal {
  readonly piece: Piece;
  readonly from: Square;
  readonly to?: Square | undefined;
}

/** What the reader set up by hand: the first field of a FEN, legal or not. */
export interface BoardEdit {
  readonly placement: string;
}

/** What a board for free play shows: a place of the text, and moves from there. */
export interface BoardLine {
  readonly at: HTMLElement;
  readonly moves: readonly PlayedMove[];
  /** Number of them on the board. */
  readonly shown: number;
}

export interface BoardEvents {
  'course-board-wish': BoardWish;
  /** The reader touches the squares; comes before anything else. */
  'course-board-touch': undefined;
  /** A legal move was made; the board shows it when told to. */
  'course-board-move': BoardMove;
  'course-board-refuse': BoardRefusal;
  /** A piece was set, moved or taken off (`set-up.ts`); the board shows it only when told to. */
  'course-board-edit': BoardEdit;
  /** The reader asks for moves, notes and marks of his own. */
  'course-board-own': undefined;
  'course-board-line': BoardLine;
  'course-board-fold': undefined;
}

export function onBoard<Name extends keyof BoardEvents>(
  board: EventTarget,
  name: Name,
  listener: (detail: BoardEvents[Name]) => void,
): void {
  board.addEventListener(name, (event) =>
    listener((event as CustomEvent<BoardEvents[Name]>).detail),
  );
}
