import type { PaintName } from './paint.ts';

/** A path of a board: the part it is, which says how it is painted, and its data in board units. */
export interface Shape {
  readonly part: PaintName;
  readonly d: string;
}
