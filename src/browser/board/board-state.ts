import type { Color, Piece, PieceKind, PlayedMove, Square } from '../../chess/types.ts';
import type { BoardPicture } from '../../draw/picture.ts';
import type { Glide } from './draw-on.ts';

/** A move that can be played on a board. */
export interface BoardMove {
  /** As the page prints it, in the letters of its language. */
  readonly san: string;
  readonly from: Square;
  readonly to: Square;
  readonly promotion?: PieceKind | undefined;
}

/** What a board is told to show; of its parts only those are there that `data-parts` names. */
export interface BoardState extends BoardPicture {
  readonly view: Color;
  /** For readers who do not see the board: its pieces in words. */
  readonly description: string;
  /** `Position.key` of what it shows, where the reader may play freely from there (`free/`). */
  readonly key?: string | undefined;
  /** Draws what lies over the board, whenever that is drawn. */
  readonly drawOver?: ((svg: Element, view: Color) => void) | undefined;
  /** The moves that the reader may play here; without them the board is only looked at. */
  readonly legal?: readonly BoardMove[] | undefined;
  /** What stands under the board, and where in the page it leads. */
  readonly caption?: { readonly text: string; readonly href: string } | undefined;
  /** What the author says of the move that led here; it is moved into the board. */
  readonly comment?: DocumentFragment | undefined;
  /** The moves from here, the main one first. */
  readonly choices?: readonly string[] | undefined;
  /** Links to other places where this position is reached. */
  readonly also?: readonly { readonly text: string; readonly href: string }[] | undefined;
  /** Whether there is a step to take. */
  readonly canGoBack?: boolean | undefined;
  readonly canGoOn?: boolean | undefined;
  /** A piece glides from the first square to the second: a step of one move, either way. */
  readonly glide?: Glide | undefined;
}

/** What a reader asks of the board; `choice` counts from 0. */
export type BoardWish =
  | { readonly go: 'back' | 'on' }
  | { readonly go: 'choice'; readonly choice: number };

/** A try that is no legal move; without `to` it is a piece of the side that is not to move. */
export interface BoardRefusal {
  readonly piece: Piece;
  readonly from: Square;
  readonly to?: Square | undefined;
}

/** What the reader set up by hand: the first field of a FEN, legal or not. */
export interface BoardEdit {
  readonly placement: string;
}

/** What a board that is free to play on shows: a place of the text, and moves played from there. */
export interface BoardLine {
  readonly at: HTMLElement;
  readonly moves: readonly PlayedMove[];
  /** How many of them are on the board. */
  readonly shown: number;
}

/** The events of a board by name, with their details. */
export interface BoardEvents {
  /** A step or a choice was asked for. */
  'course-board-wish': BoardWish;
  /** The reader touches the squares; comes before anything else. */
  'course-board-touch': undefined;
  /** A legal move was made; the board shows it only when it is told to. */
  'course-board-move': BoardMove;
  'course-board-refuse': BoardRefusal;
  /** A piece was set, moved or taken off (`set-up.ts`); the board shows it only when told to. */
  'course-board-edit': BoardEdit;
  /** The reader asks for moves, notes and marks of his own. */
  'course-board-own': undefined;
  /** Something else is on a board that is free to play on. */
  'course-board-line': BoardLine;
  /** The board was folded away, or came back. */
  'course-board-fold': undefined;
}

/** Listens to a board's event. */
export function onBoard<Name extends keyof BoardEvents>(
  board: EventTarget,
  name: Name,
  listener: (detail: BoardEvents[Name]) => void,
): void {
  board.addEventListener(name, (event) =>
    listener((event as CustomEvent<BoardEvents[Name]>).detail),
  );
}
