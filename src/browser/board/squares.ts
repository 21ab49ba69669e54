import type { Color, Square } from '../../chess/types.ts';
import { isArrowKey, squareBeside } from './arrow-keys.ts';
import { dragPieces } from './drag-pieces.ts';
import { makeSquareGrid } from './square-grid.ts';

/** The squares of a board that is acted on: one button each, over the drawing. */
export interface Squares {
  readonly element: HTMLElement;
  /** Sets the squares as the board is seen, with their names and what may be dragged. */
  setUp(
    view: Color,
    nameOf: (square: Square) => string,
    mayDrag: (square: Square) => boolean,
  ): void;
  /** Marks a square as chosen; `undefined` none. */
  choose(square: Square | undefined): void;
  squareUnder(point: { clientX: number; clientY: number }): Square | undefined;
  readonly chosen: Square | undefined;
  focus(): void;
}

export interface SquaresEvents {
  /** Comes before anything else. */
  readonly onTouch: () => void;
  /** A tap, a click, or Enter. */
  readonly onTap: (square: Square) => void;
  /** The end of a drag; `to` is absent outside the board. */
  readonly onDrop: (from: Square, to: Square | undefined) => void;
  /** Delete, or the key beside it that also takes away what was written. */
  readonly onErase?: (square: Square) => void;
}

/**
 * Everything that a drag does two taps do too. With the keyboard the arrow keys walk over the
 * board, which is one stop for the Tab key; Enter chooses and Escape lets go.
 */
export function makeSquares(
  svg: Element,
  label: string,
  { onTouch, onTap, onDrop, onErase }: SquaresEvents,
): Squares {
  const grid = makeSquareGrid(label);
  const { element, squareUnder } = grid;
  let mayDrag: (square: Square) => boolean = () => false;
  let chosen: Square | undefined;

  function choose(square: Square | undefined): void {
    if (chosen !== undefined) grid.buttonOf(chosen)?.setAttribute('aria-pressed', 'false');
    chosen = square;
    if (square !== undefined) grid.buttonOf(square)?.setAttribute('aria-pressed', 'true');
  }

  element.addEventListener('click', (event) => {
    const square = squareOf(event.target);
    if (square === undefined) return;
    onTouch();
    grid.stopAt(square);
    onTap(square);
  });
  dragPieces(svg, element, {
    onStart(target) {
      const from = squareOf(target);
      onTouch();
      if (from === undefined || !mayDrag(from)) return undefined;
      choose(from);
      return from;
    },
    onEnd(from, point) {
      choose(undefined);
      if (point === undefined) return;
      const to = squareUnder(point);
      if (to === from) return;
      if (to !== undefined) grid.stopAt(to);
      onDrop(from, to);
    },
  });
  element.addEventListener('keydown', (event) => {
    const square = squareOf(event.target);
    if (square === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Escape') choose(undefined);
    if (event.key === 'Delete' || event.key === 'Backspace') onErase?.(square);
    if (!isArrowKey(event.key)) return;
    event.preventDefault();
    const next = squareBeside(square, event.key, grid.view);
    if (next === undefined) return;
    grid.stopAt(next);
    grid.buttonOf(next)?.focus();
  });

  return {
    element,
    setUp(view, nameOf, drags) {
      mayDrag = drags;
      choose(undefined);
      grid.setUp(view, nameOf, drags);
    },
    choose,
    squareUnder,
    get chosen() {
      return chosen;
    },
    focus: () =>
      element.querySelector<HTMLElement>('[tabindex="0"]')?.focus({ preventScroll: true }),
  };
}

function squareOf(target: EventTarget | null): Square | undefined {
  return target instanceof HTMLElement ? target.dataset.square : undefined;
}
