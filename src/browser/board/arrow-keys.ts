import type { Color, Square } from '../../chess/types.ts';
import { side, squareAt, squareCentre } from '../../draw/geometry.ts';

const directions: Readonly<Record<string, { x: number; y: number }>> = {
  ArrowLeft: { x: -side, y: 0 },
  ArrowRight: { x: side, y: 0 },
  ArrowUp: { x: 0, y: -side },
  ArrowDown: { x: 0, y: side },
};

/** Whether a key, as `KeyboardEvent.key` names it, walks over the board. */
export function isArrowKey(key: string): boolean {
  return directions[key] !== undefined;
}

/** The square next to another in the direction of an arrow key; absent beyond the edge. */
export function squareBeside(square: Square, key: string, view: Color): Square | undefined {
  const { x, y } = squareCentre(square, view);
  const by = directions[key] ?? { x: 0, y: 0 };
  return squareAt({ x: x + by.x, y: y + by.y }, view);
}
