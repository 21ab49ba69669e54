import type { Color, Piece, Square } from '../chess/types.ts';
import { squareAt, squareCorner } from '../draw/geometry.ts';
import { readPlacement } from '../draw/placement.ts';
import type { ExerciseWords } from './exercise-words.ts';

/** The squares of a board that is answered on: one button each, over the drawing. */
export interface Squares {
  readonly element: HTMLElement;
  /** What stands on the board, and whose pieces may be moved. */
  setUp(placement: string, turn: Color): void;
  release(): void;
}

/** What the reader does; `onTouch` comes before anything else. */
export interface SquaresEvents {
  readonly onTouch: () => void;
  readonly onMove: (from: Square, to: Square, piece: Piece) => void;
  /** A piece was chosen whose side is not to move. */
  readonly onOther: () => void;
}

/** Pixels that a pointer may stray in a tap. */
const strayInTap = 6;

/**
 * A move is two taps, a drag, or, with the keyboard, two squares chosen with Enter: the arrow
 * keys walk over the board, which is one stop for the Tab key.
 */
export function makeSquares(
  svg: Element,
  view: Color,
  words: ExerciseWords,
  { onTouch, onMove, onOther }: SquaresEvents,
): Squares {
  const element = document.createElement('div');
  element.className = 'squares';
  element.setAttribute('role', 'group');
  element.setAttribute('aria-label', words.board);
  const buttons = new Map<Square, HTMLButtonElement>();
  for (let row = 0; row < 8; row++) {
    for (let column = 0; column < 8; column++) {
      const square = squareAt({ x: column * 10 + 5, y: row * 10 + 5 }, view) ?? '';
      const button = document.createElement('button');
      button.type = 'button';
      button.tabIndex = buttons.size === 0 ? 0 : -1;
      button.dataset.square = square;
      buttons.set(square, button);
      element.append(button);
    }
  }
  let pieces = new Map<Square, Piece>();
  let turn: Color = 'white';
  let chosen: Square | undefined;
  let drag: { from: Square; x: number; y: number; moving: boolean } | undefined;
  let dragged = false;

  function choose(square: Square | undefined): void {
    if (chosen !== undefined) buttons.get(chosen)?.setAttribute('aria-pressed', 'false');
    chosen = square;
    if (square !== undefined) buttons.get(square)?.setAttribute('aria-pressed', 'true');
  }

  function walkTo(square: Square | undefined): void {
    const button = square === undefined ? undefined : buttons.get(square);
    if (button === undefined) return;
    for (const other of buttons.values()) other.tabIndex = -1;
    button.tabIndex = 0;
  }

  function act(square: Square): void {
    onTouch();
    walkTo(square);
    const piece = pieces.get(square);
    const mover = chosen === undefined ? undefined : pieces.get(chosen);
    if (chosen === square) choose(undefined);
    else if (piece?.color === turn) choose(square);
    else if (chosen !== undefined && mover !== undefined) {
      const from = chosen;
      choose(undefined);
      onMove(from, square, mover);
    } else if (piece !== undefined) onOther();
  }

  element.addEventListener('click', (event) => {
    const square = squareOf(event.target);
    if (square !== undefined && !dragged) act(square);
    dragged = false;
  });
  element.addEventListener('pointerdown', (event) => {
    dragged = false;
    const from = squareOf(event.target);
    if (!event.isPrimary || event.button !== 0 || from === undefined) return;
    drag = { from, x: event.clientX, y: event.clientY, moving: false };
  });
  element.addEventListener('pointermove', (event) => {
    if (drag === undefined || !event.isPrimary) return;
    const [dx, dy] = [event.clientX - drag.x, event.clientY - drag.y];
    if (!drag.moving) {
      if (Math.hypot(dx, dy) < strayInTap) return;
      onTouch();
      if (pieces.get(drag.from)?.color !== turn) {
        drag = undefined;
        return;
      }
      drag.moving = true;
      choose(drag.from);
      element.setPointerCapture(event.pointerId);
      element.classList.add('dragging');
    }
    const unit = 80 / element.getBoundingClientRect().width;
    carry(svg, drag.from, dx * unit, dy * unit);
  });
  element.addEventListener('pointerup', (event) => {
    const from = drag?.moving ? drag.from : undefined;
    endDrag();
    if (from === undefined) return;
    // A click follows the end of a drag, and is none.
    dragged = true;
    const piece = pieces.get(from);
    const to = squareUnder(event);
    choose(undefined);
    carry(svg, from, 0, 0);
    if (piece !== undefined && to !== undefined && to !== from) {
      walkTo(to);
      onMove(from, to, piece);
    }
  });
  element.addEventListener('pointercancel', () => {
    if (drag?.moving) carry(svg, drag.from, 0, 0);
    choose(undefined);
    endDrag();
  });
  element.addEventListener('keydown', (event) => {
    const square = squareOf(event.target);
    if (square === undefined || event.altKey || event.ctrlKey || event.metaKey) return;
    if (event.key === 'Escape') choose(undefined);
    const way = ways[event.key];
    if (way === undefined) return;
    event.preventDefault();
    const { x, y } = squareCorner(square, view);
    const next = squareAt({ x: x + way.x * 10 + 5, y: y + way.y * 10 + 5 }, view);
    walkTo(next);
    if (next !== undefined) buttons.get(next)?.focus();
  });

  function endDrag(): void {
    drag = undefined;
    element.classList.remove('dragging');
  }

  function squareUnder({ clientX, clientY }: PointerEvent): Square | undefined {
    const { left, top, width, height } = element.getBoundingClientRect();
    const point = { x: ((clientX - left) / width) * 80, y: ((clientY - top) / height) * 80 };
    return squareAt(point, view);
  }

  return {
    element,
    setUp(placement, toMove) {
      turn = toMove;
      pieces = new Map(readPlacement(placement).map(({ square, piece }) => [square, piece]));
      for (const [square, button] of buttons) {
        const piece = pieces.get(square);
        const name = piece && `${words[piece.color]} ${words.pieces[piece.kind]}`;
        button.setAttribute('aria-label', name === undefined ? square : `${square}, ${name}`);
        button.classList.toggle('movable', piece?.color === turn);
      }
      choose(undefined);
    },
    release: () => choose(undefined),
  };
}

const ways: Readonly<Record<string, { x: number; y: number }>> = {
  ArrowLeft: { x: -1, y: 0 },
  ArrowRight: { x: 1, y: 0 },
  ArrowUp: { x: 0, y: -1 },
  ArrowDown: { x: 0, y: 1 },
};

function squareOf(target: EventTarget | null): Square | undefined {
  return target instanceof HTMLElement ? target.dataset.square : undefined;
}

/** Shows a piece away from its square, in board units; on top of all others. */
function carry(svg: Element, square: Square, dx: number, dy: number): void {
  const piece = svg.querySelector(`.pieces [data-square="${square}"]`);
  if (piece === null) return;
  if (dx === 0 && dy === 0) piece.removeAttribute('transform');
  else piece.setAttribute('transform', `translate(${dx} ${dy})`);
  if (piece.nextElementSibling !== null) piece.parentElement?.append(piece);
}
