import type { Place, Point } from './place.ts';

/** So many characters behind a point, in its line. */
export function pointBehind({ line, column, offset }: Point, by: number): Point {
  return { line, column: column + by, offset: offset + by };
}

/** A part of a place that stands in one line; `from` and `to` count from its start. */
export function withinLine({ file, start }: Place, from: number, to: number): Place {
  return { file, start: pointBehind(start, from), end: pointBehind(start, to) };
}
