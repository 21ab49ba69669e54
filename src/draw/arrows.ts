/**
 * Arrows by what they mean. Runs in the browser too: no Node imports.
 *
 * The three meanings differ in hue, in dash and in head, so that they are told apart in one-colour
 * print and by colour-blind readers: a plan is a solid line with a filled head, a threat a dashed
 * line with an open barbed head, and a guard a dotted line that ends in a shield before the square.
 */
import type { Color, Square } from '../chess/index.ts';
import { type Point, short, squareCentre } from './geometry.ts';
import type { Shape } from './paint.ts';

export type ArrowMeaning = 'plan' | 'threat' | 'guard';

export interface BoardArrow {
  readonly meaning: ArrowMeaning;
  readonly from: Square;
  readonly to: Square;
}

/** How far from a square's middle an arrow starts and ends, in board units. */
const startGap = 2.6;
const endGap = 1.4;
/** How far arrows that share both squares stand apart. */
const laneWidth = 2.6;

/**
 * The shapes of arrows in board units, in drawing order. Each lies on a ground of paper that keeps
 * it apart from the pieces it crosses. Arrows between the same two squares stand side by side.
 * @throws RangeError if an end is no square, or both ends are one square.
 */
export function arrowShapes(arrows: readonly BoardArrow[], view: Color): readonly Shape[] {
  const lanes = new Map<string, BoardArrow[]>();
  for (const arrow of arrows) {
    const lane = lanes.get(laneOf(arrow)) ?? [];
    const repeated = lane.some((a) => a.meaning === arrow.meaning && a.from === arrow.from);
    if (!repeated) lane.push(arrow);
    lanes.set(laneOf(arrow), lane);
  }
  return [...lanes.values()].flatMap((lane) =>
    lane.flatMap((arrow, index) => {
      const outward = arrow.from < arrow.to ? 1 : -1;
      return oneArrow(arrow, view, outward * (index - (lane.length - 1) / 2) * laneWidth);
    }),
  );
}

/** Arrows between the same two squares, in either direction, share a lane. */
function laneOf({ from, to }: BoardArrow): string {
  return from < to ? `${from}-${to}` : `${to}-${from}`;
}

function oneArrow({ meaning, from, to }: BoardArrow, view: Color, shift: number): Shape[] {
  if (from === to) throw new RangeError(`an arrow from ${from} to ${to} leads nowhere`);
  const a = squareCentre(from, view);
  const b = squareCentre(to, view);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  /** The point `forward` units before `to`'s middle, `aside` units off the line. */
  const at = (forward: number, aside: number): string => {
    const off = aside + shift;
    return point({
      x: b.x - along.x * forward - along.y * off,
      y: b.y - along.y * forward + along.x * off,
    });
  };
  const start = at(length - startGap, 0);
  const line = (end: number) => `M${start}L${at(end, 0)}`;
  switch (meaning) {
    case 'plan': {
      const back = endGap + 3;
      const head = `M${at(endGap, 0)}L${at(back, 1.5)}L${at(back, -1.5)}z`;
      return [
        { part: 'arrow-ground', d: line(back) + head },
        { part: 'plan-shaft', d: line(back - 0.1) },
        { part: 'plan-head', d: head },
      ];
    }
    case 'threat': {
      const barbs = (tip: number) => `M${at(tip + 2.3, 1.7)}L${at(tip, 0)}L${at(tip + 2.3, -1.7)}`;
      const head = barbs(endGap) + barbs(endGap + 1.7);
      return [
        { part: 'arrow-ground', d: line(endGap) + head },
        { part: 'threat-shaft', d: line(endGap + 1.7) },
        { part: 'threat-head', d: head },
      ];
    }
    case 'guard': {
      const head = `M${at(3.1, 2.6)}Q${at(5.4, 0)} ${at(3.1, -2.6)}`;
      return [
        { part: 'arrow-ground', d: line(5) + head },
        { part: 'guard-shaft', d: line(5.2) },
        { part: 'guard-head', d: head },
      ];
    }
  }
}

function point({ x, y }: Point): string {
  return `${short(x)} ${short(y)}`;
}
