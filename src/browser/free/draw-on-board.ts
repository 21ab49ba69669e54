import type { Color, Square } from '../../chess/types.ts';
import { squareAt } from '../../draw/geometry.ts';

export interface DrawingEvents {
  /** From a square to another, or to itself. */
  readonly onDraw: (from: Square, to: Square) => void;
  /** The first of two squares was chosen; absent where the choice was dropped. */
  readonly onChoose: (from: Square | undefined) => void;
}

export interface BoardDrawing {
  /** While it is on, every button of a mouse, a finger and the keys draw, and no piece moves. */
  set(isOn: boolean): void;
}

/**
 * Lets the reader draw on the squares of a board: always with a mouse's right button, and with anything in the
 * mode for it. It hears of what is done before the squares themselves do.
 */
export function drawOnBoard(board: HTMLElement, { onDraw, onChoose }: DrawingEvents): BoardDrawing {
  const stand = board.querySelector<HTMLElement>('.board-stand') ?? board;
  let isOn = false;
  let chosen: Square | undefined;
  let dragged = false;

  function choose(square: Square | undefined): void {
    chosen = square;
    for (const button of stand.querySelectorAll('.own-from')) button.classList.remove('own-from');
    if (square !== undefined) {
      stand.querySelector(`.squares [data-square="${square}"]`)?.classList.add('own-from');
    }
  }

  const inSquares = (target: EventTarget | null) =>
    target instanceof Element && target.closest('.squares') !== null;
  const capture = { capture: true };
  stand.addEventListener(
    'pointerdown',
    (down) => {
      const draws = down.button === 2 || (isOn && down.button === 0);
      if (!draws || !down.isPrimary || !inSquares(down.target)) return;
      down.stopPropagation();
      dragged = false;
      const svg = stand.querySelector('svg');
      const from = svg === null ? undefined : squareUnder(svg, down);
      const end = new AbortController();
      const options = { signal: end.signal };
      addEventListener('pointercancel', () => end.abort(), options);
      addEventListener(
        'pointerup',
        (up) => {
          end.abort();
          const to = svg === null ? undefined : squareUnder(svg, up);
          if (from === undefined || to === undefined) return;
          // In the mode, a tap is a click: keys make one too.
          if (from === to && down.button === 0) return;
          dragged = down.button === 0;
          choose(undefined);
          onDraw(from, to);
        },
        options,
      );
    },
    capture,
  );
  stand.addEventListener(
    'click',
    (click) => {
      const { target } = click;
      if (!isOn || !inSquares(target)) return;
      click.stopPropagation();
      const square = target instanceof HTMLElement ? target.dataset.square : undefined;
      if (dragged || square === undefined) {
        dragged = false;
        return;
      }
      const from = chosen;
      choose(from === undefined ? square : undefined);
      if (from === undefined) onChoose(square);
      else onDraw(from, square);
    },
    capture,
  );
  stand.addEventListener('keydown', (event) => {
    if (event.key !== 'Escape' || chosen === undefined) return;
    choose(undefined);
    onChoose(undefined);
  });
  stand.addEventListener('contextmenu', (event) => {
    if (inSquares(event.target)) event.preventDefault();
  });
  return {
    set(now) {
      isOn = now;
      choose(undefined);
      board.classList.toggle('own-drawing-on', now);
    },
  };
}

/** The square of a drawn board at a point of the window. */
export function squareUnder(
  svg: SVGSVGElement,
  { clientX, clientY }: { readonly clientX: number; readonly clientY: number },
): Square | undefined {
  const toBoard = svg.getScreenCTM()?.inverse();
  if (toBoard === undefined) return undefined;
  const view: Color = svg.dataset.view === 'black' ? 'black' : 'white';
  return squareAt(new DOMPoint(clientX, clientY).matrixTransform(toBoard), view);
}
