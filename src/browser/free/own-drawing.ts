import type { Color, Square } from '../../chess/types.ts';
import { side, squareCentre } from '../../draw/geometry.ts';
import type { OwnArrow, OwnEntry } from './own-entry.ts';

/** How far from a square's middle an arrow starts and ends, in board units. */
const start = 1.5;
const end = 2;
/** Half of what lies between the two lines of its shaft. */
const apart = 0.55;

/**
 * What the reader drew, as SVG: hollow throughout, where the author's arrows and brackets are solid, so that the
 * two are told apart without colour. An arrow is a double line from a ring to an open head; a mark is a lozenge.
 */
function ownMarkup(
  { marks = [], arrows = [] }: Pick<OwnEntry, 'marks' | 'arrows'>,
  view: Color,
): string {
  const shapes = [
    ...marks.map((square) => lozenge(square, view)),
    ...arrows.map((arrow) => arrowPath(arrow, view)),
  ];
  return shapes
    .map((d) => `<path class="own-ground" d="${d}"/><path class="own-stroke" d="${d}"/>`)
    .join('');
}

function lozenge(square: Square, view: Color): string {
  const { x, y } = squareCentre(square, view);
  const reach = side / 2 - 0.7;
  return `M${x} ${y - reach}L${x + reach} ${y}L${x} ${y + reach}L${x - reach} ${y}z`;
}

function arrowPath({ from, to }: OwnArrow, view: Color): string {
  const a = squareCentre(from, view);
  const b = squareCentre(to, view);
  const length = Math.hypot(b.x - a.x, b.y - a.y);
  const along = { x: (b.x - a.x) / length, y: (b.y - a.y) / length };
  const at = (forward: number, aside: number): string => {
    const x = a.x + along.x * forward - along.y * aside;
    const y = a.y + along.y * forward + along.x * aside;
    return `${x.toFixed(2)} ${y.toFixed(2)}`;
  };
  const tip = length - end;
  const neck = tip - 2.6;
  const shaft = [apart, -apart].map((off) => `M${at(start, off)}L${at(neck, off)}`).join('');
  const head = `M${at(neck, 1.7)}L${at(tip, 0)}L${at(neck, -1.7)}z`;
  return circle(a.x, a.y, start) + shaft + head;
}

function circle(x: number, y: number, r: number): string {
  return `M${x - r} ${y}a${r} ${r} 0 1 0 ${2 * r} 0a${r} ${r} 0 1 0 ${-2 * r} 0`;
}

export function drawOwn(svg: Element, entry: OwnEntry | undefined, view: Color): void {
  let group = svg.querySelector('.own-over');
  if (group === null) {
    group = document.createElementNS('http://www.w3.org/2000/svg', 'g');
    group.setAttribute('class', 'own-over');
    svg.append(group);
  }
  group.innerHTML = entry === undefined ? '' : ownMarkup(entry, view);
}
