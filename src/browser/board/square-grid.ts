import type { Color, Square } from '../../chess/types.ts';
import { squareAt } from '../../draw/geometry.ts';

/** A button for each square, over a board's drawing; together they are one stop for the Tab key. */
export interface SquareGrid {
  readonly element: HTMLElement;
  /** The side that the board is seen from. */
  readonly view: Color;
  setUp(
    view: Color,
    nameOf: (square: Square) => string,
    movable: (square: Square) => boolean,
  ): void;
  buttonOf(square: Square): HTMLButtonElement | undefined;
  /** Makes a square the one that the Tab key comes to. */
  stopAt(square: Square): void;
  squareUnder(point: { clientX: number; clientY: number }): Square | undefined;
}

/** @param label of all squares together. */
export function makeSquareGrid(label: string): SquareGrid {
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
  return {
    element,
    get view() {
      return view;
    },
    setUp(seenFrom, nameOf, movable) {
      view = seenFrom;
      buttons.clear();
      for (const [index, button] of inOrder.entries()) {
        const point = { x: (index % 8) * 10 + 5, y: (index >> 3) * 10 + 5 };
        const square = squareAt(point, view) ?? '';
        buttons.set(square, button);
        button.dataset.square = square;
        button.setAttribute('aria-label', nameOf(square));
        button.classList.toggle('movable', movable(square));
      }
    },
    buttonOf: (square) => buttons.get(square),
    stopAt(square) {
      for (const button of inOrder) button.tabIndex = button.dataset.square === square ? 0 : -1;
    },
    squareUnder({ clientX, clientY }) {
      const { left, top, width, height } = element.getBoundingClientRect();
      const point = { x: ((clientX - left) / width) * 80, y: ((clientY - top) / height) * 80 };
      return squareAt(point, view);
    },
  };
}
