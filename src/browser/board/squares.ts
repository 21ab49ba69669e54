import type { Color, Square } from '../../chess/types.ts';
import { squareAt } from '../../draw/geometry.ts';
import { isArrowKey, squareBeside } from './arrow-keys.ts';
import { dragPieces } from './drag-pieces.ts';

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
  /** The square at a point of the window. */
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
  const element = document.createElement('div');
  element.className = 'squares';
  element.setAttribute('role', 'group');
  element.setAttribute('aria-label', label);
  const inOrder = Array.from({ length: 64 }, (_, index) => {
    const button = document.createElement('button');
    button.type = 'button';
    button.tabIndex = index === 0 ? 0 : -1;
    return button;
  });
  element.append(...inOrder);
  const buttons = new Map<Square, HTMLButtonElement>();
  let view: Color = 'white';
  let mayDrag: (square: Square) => boolean = () => false;
  let chosen: Square | undefined;

  function choose(square: Square | undefined): void {
    if (chosen !== undefined) buttons.get(chosen)?.setAttribute('aria-pressed', 'false');
    chosen = square;
    if (square !== undefined) buttons.get(square)?.setAttribute('aria-pressed', 'true');
  }

  function walkTo(square: Square | undefined): void {
    const button = square === undefined ? undefined : buttons.get(square);
    if (button === undefined) return;
    for (const other of inOrder) other.tabIndex = -1;
    button.tabIndex = 0;
  }

  element.addEventListener('click', (event) => {
    const square = squareOf(event.target);
    if (square === undefined) return;
    onTouch();
    walkTo(square);
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
      walkTo(to);
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
    const next = squareBeside(square, event.key, view);
    walkTo(next);
    if (next !== undefined) buttons.get(next)?.focus();
  });

  function squareUnder({ clientX, clientY }: { clientX: number; clientY: number }) {
    const { left, top, width, height } = element.getBoundingClientRect();
    const point = { x: ((clientX - left) / width) * 80, y: ((clientY - top) / height) * 80 };
    return squareAt(point, view);
  }

  return {
    element,
    setUp(seen, nameOf, drags) {
      view = seen;
      mayDrag = drags;
      choose(undefined);
      buttons.clear();
      for (const [index, button] of inOrder.entries()) {
        const point = { x: (index % 8) * 10 + 5, y: (index >> 3) * 10 + 5 };
        const square = squareAt(point, view) ?? '';
        buttons.set(square, button);
        button.dataset.square = square;
        button.setAttribute('aria-label', nameOf(square));
        button.classList.toggle('movable', drags(square));
      }
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
