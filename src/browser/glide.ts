import type { Glide } from './board/draw-on.ts';
import type { Spot } from './spots.ts';

/** How a piece glides between two neighbours, forwards or back; absent between others. */
export function glideBetween(before: Spot, spot: Spot): Glide | undefined {
  if (spot.parent === before) return spot.move;
  return before.parent === spot && before.move
    ? { from: before.move.to, to: before.move.from }
    : undefined;
}
