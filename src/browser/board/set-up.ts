import type { Piece, Square } from '../../chess/types.ts';
import { writePlacement } from '../../chess/write-placement.ts';
import { readPlacement } from '../../draw/placement.ts';
import { squareInWords, wordsOf } from './board-words.ts';
import type { CourseBoard } from './course-board.ts';
import type { Hands } from './hands.ts';
import { makePieceTray } from './piece-tray.ts';
import { makeSquares } from './squares.ts';

/**
 * Lets the reader set up any position on a board, whether or not a game could reach it:
 *
 *     setUpByHand(board);
 *     onBoard(board, 'course-board-edit', ({ placement }) => board.show({ ...state, placement }));
 *     board.show(state);
 *
 * A piece is chosen in the tray below the board and set by a tap, or dragged from there; tapped
 * again it goes. Without a chosen piece those on the board are moved, by a drag or by two taps;
 * one that is dragged off is taken off, as are those that Delete is pressed on. The board's part
 * `voice` tells what now stands on a square. `data-words` has `setUp` beside the board's own.
 */
export function setUpByHand(board: CourseBoard): void {
  board.giveTo((svg) => makeSetUp(svg, board));
}

function makeSetUp(svg: Element, board: CourseBoard): Hands {
  const words = wordsOf(board, 'setUp');
  let pieces = new Map<Square, Piece>();
  const squares = makeSquares(svg, words.setUp.squares, {
    onTouch: () => undefined,
    onTap(square) {
      const { chosen: tool } = tray;
      const piece = pieces.get(square);
      if (tool !== undefined) {
        const goes = tool === 'take-off' || isSame(tool, piece);
        put(square, goes ? undefined : tool);
      } else if (squares.chosen === square) squares.choose(undefined);
      else if (squares.chosen !== undefined) carry(squares.chosen, square);
      else if (piece !== undefined) squares.choose(square);
    },
    onDrop: carry,
    onErase: (square) => put(square, undefined),
  });
  const tray = makePieceTray(
    {
      tray: words.setUp.tray,
      takeOff: words.setUp.takeOff,
      nameOf: ({ color, kind }) => `${words[color]} ${words.pieces[kind]}`,
    },
    {
      onChoose: () => squares.choose(undefined),
      onDrop(piece, point) {
        const square = squares.squareUnder(point);
        if (square !== undefined) put(square, piece);
      },
    },
  );
  squares.element.addEventListener('keydown', ({ key }) => {
    if (key === 'Escape') tray.choose(undefined);
  });

  function put(square: Square, piece: Piece | undefined): void {
    if (isSame(piece, pieces.get(square))) return;
    const next = new Map(pieces);
    if (piece === undefined) next.delete(square);
    else next.set(square, piece);
    tell(next, square);
  }

  /** Without `to` the piece leaves the board. */
  function carry(from: Square, to: Square | undefined): void {
    const piece = pieces.get(from);
    squares.choose(undefined);
    if (piece === undefined) return;
    const next = new Map(pieces);
    next.delete(from);
    if (to !== undefined) next.set(to, piece);
    tell(next, to ?? from);
  }

  function tell(next: ReadonlyMap<Square, Piece>, square: Square): void {
    board.say(nameOf(square, next));
    const detail = { placement: writePlacement(next) };
    board.dispatchEvent(new CustomEvent('course-board-edit', { detail, bubbles: true }));
  }

  function nameOf(square: Square, on: ReadonlyMap<Square, Piece>): string {
    const piece = on.get(square);
    return piece === undefined
      ? `${square}, ${words.setUp.empty}`
      : squareInWords(square, piece, words);
  }

  return {
    elements: [squares.element, tray.element],
    setUp({ placement }, view) {
      pieces = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
      squares.setUp(
        view,
        (square) => nameOf(square, pieces),
        (square) => pieces.has(square),
      );
    },
  };
}

function isSame(one: Piece | undefined, other: Piece | undefined): boolean {
  return one?.kind === other?.kind && one?.color === other?.color;
}
