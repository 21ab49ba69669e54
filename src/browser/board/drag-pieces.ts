import type { Square } from '../../chess/types.ts';
import { listenForDrags } from './drags.ts';

export interface PieceDragEvents {
  /** Comes first; returns the square whose piece is dragged from there, if it may be. */
  readonly onStart: (target: EventTarget | null) => Square | undefined;
  /** `point` is where the piece was dropped; absent where the browser took the pointer away. */
  readonly onEnd: (from: Square, point: PointerEvent | undefined) => void;
}

/** Lets the pieces of a drawing be dragged by the squares that lie over it. */
export function dragPieces(
  svg: Element,
  squares: HTMLElement,
  { onStart, onEnd }: PieceDragEvents,
): void {
  let dragged: Square | undefined;
  listenForDrags(squares, {
    onStart(target) {
      dragged = onStart(target);
      squares.classList.toggle('dragging', dragged !== undefined);
      return dragged !== undefined;
    },
    onMove(dx, dy) {
      const unit = 80 / squares.getBoundingClientRect().width;
      if (dragged !== undefined) carry(svg, dragged, dx * unit, dy * unit);
    },
    onEnd(point) {
      const from = dragged;
      dragged = undefined;
      squares.classList.remove('dragging');
      if (from === undefined) return;
      carry(svg, from, 0, 0);
      onEnd(from, point);
    },
  });
}

/** Shows a piece away from its square, in board units; on top of all others. */
function carry(svg: Element, square: Square, dx: number, dy: number): void {
  const piece = svg.querySelector(`.pieces [data-square="${square}"]`);
  if (piece === null) return;
  if (dx === 0 && dy === 0) piece.removeAttribute('transform');
  else piece.setAttribute('transform', `translate(${dx} ${dy})`);
  if (piece.nextElementSibling !== null) piece.parentElement?.append(piece);
}
