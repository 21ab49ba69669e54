import type { Color, Square } from '../chess/types.ts';
import { dataOf } from '../contract/attributes.ts';
import { readPositionAddress } from '../contract/position-address.ts';
import type { BoardArrow } from '../draw/arrows.ts';
import { type SquaresOfMove, squaresOfMove } from './squares-of-move.ts';

/** One position of the page's moves: a move's link in the text, or a block for its start. */
export interface Spot {
  readonly element: HTMLElement;
  readonly parent: Spot | undefined;
  /** The first continues the line, others are variations. */
  readonly children: Spot[];
  readonly placement: string;
  /** The address of the position alone; several spots may have the same. */
  readonly address: string;
  readonly view: Color;
  readonly marks: readonly Square[];
  readonly arrows: readonly BoardArrow[];
  /** Where else the course reaches this position: addresses in the site, and the moves there. */
  readonly also: readonly { readonly href: string; readonly move: string }[];
  /** Absent for a start position and for a diagram. */
  readonly move: SpotMove | undefined;
  /** Of a diagram: the move of the text that leads to its position, and the last move that it shows. */
  readonly home?: Spot | undefined;
  readonly lastMove?: SquaresOfMove | undefined;
}

export interface SpotMove {
  /** As the page prints it, without number and glyphs. */
  readonly san: string;
  readonly number: number;
  readonly color: Color;
  readonly from: Square;
  readonly to: Square;
}

const meanings = ['plan', 'threat', 'guard'] as const;

/** Those that are read in the text; an exercise's lines are its own. */
const blocksInText = '.moves:not(.exercise .moves, .answers .moves)';

/** Reads blocks of moves in the page; the attributes are those that `site/render` writes. */
export function readSpots(root: ParentNode, blocks = blocksInText): Map<Element, Spot> {
  const spots = new Map<Element, Spot>();
  for (const block of root.querySelectorAll<HTMLElement>(blocks)) readBlock(block, spots);
  return spots;
}

function readBlock(block: HTMLElement, spots: Map<Element, Spot>): void {
  const data = dataOf('moves', block);
  const view = data.view === 'black' ? 'black' : 'white';
  const [, number = '1', side = 'w'] = /^(\d+)([wb])$/.exec(data.start ?? '') ?? [];
  const startPly = Number(number) * 2 + (side === 'w' ? 0 : 1);
  const start = spotOf(block, view, undefined, undefined);
  const nodes: { readonly spot: Spot; readonly ply: number }[] = [
    { spot: start, ply: startPly - 1 },
  ];
  spots.set(block, start);
  for (const element of block.querySelectorAll<HTMLElement>('.move')) {
    const parent = nodes[Number(dataOf('move', element).up ?? nodes.length - 1)];
    if (parent === undefined) continue;
    const ply = parent.ply + 1;
    const spot = spotOf(element, view, parent.spot, ply);
    nodes.push({ spot, ply });
    if (!showsPosition(element)) continue;
    parent.spot.children.push(spot);
    spots.set(element, spot);
  }
}

export const noPieces = '8/8/8/8/8/8/8/8';

/** An element tells its position by its id, else by an attribute; a move that cannot be played has neither. */
function showsPosition(element: HTMLElement): boolean {
  return dataOf('move', element).p !== undefined || readPositionAddress(element.id) !== undefined;
}

/** What is on the board is read when it is asked for: a page has hundreds of positions. */
function spotOf(
  element: HTMLElement,
  view: Color,
  parent: Spot | undefined,
  ply: number | undefined,
): Spot {
  const data = dataOf('move', element);
  return {
    element,
    parent,
    children: [],
    view,
    get placement() {
      return readPositionAddress(data.p ?? element.id)?.placement ?? noPieces;
    },
    get address() {
      return readPositionAddress(data.p ?? element.id)?.plain ?? '';
    },
    get marks() {
      return drawnOf(element).marks;
    },
    get also() {
      const places = words(data.also);
      return places.flatMap((href, index) => {
        const move = places[index + 1];
        return index % 2 === 0 && move !== undefined ? [{ href, move }] : [];
      });
    },
    get arrows() {
      return drawnOf(element).arrows;
    },
    get move() {
      if (ply === undefined) return undefined;
      const color: Color = ply % 2 === 0 ? 'white' : 'black';
      let squares: SquaresOfMove | undefined;
      const find = () => {
        squares ??= squaresOfMove(parent?.placement ?? noPieces, this.placement, color);
        return squares;
      };
      return {
        san: (element.dataset.own ?? element.textContent ?? '').replace(/^\d+\.+\s*/, ''),
        number: ply >> 1,
        color,
        // Two boards are compared for them, and most moves of a page are only named.
        get from() {
          return find().from;
        },
        get to() {
          return find().to;
        },
      };
    },
  };
}

/** The marked squares and the arrows of a place in the text. */
export function drawnOf(element: HTMLElement): Pick<Spot, 'marks' | 'arrows'> {
  const data = dataOf('move', element);
  const arrows = meanings.flatMap((meaning) =>
    words(data[meaning]).map((pair) => ({
      meaning,
      from: pair.slice(0, 2),
      to: pair.slice(2, 4),
    })),
  );
  return { marks: words(data.mark), arrows };
}

function words(text = ''): string[] {
  return text.split(' ').filter((part) => part !== '');
}

/** The last position of the line that a position stands in. */
export function endOfLine(spot: Spot): Spot {
  let end = spot;
  for (let next = end.children[0]; next !== undefined; next = end.children[0]) end = next;
  return end;
}

/** The start of the block that a position stands in. */
export function startOfBlock(spot: Spot): Spot {
  let start = spot;
  while (start.parent !== undefined) start = start.parent;
  return start;
}

/** The move beside this one where lines part: `step` 1 is the next variation, -1 the one before. */
export function beside(spot: Spot, step: 1 | -1): Spot | undefined {
  const siblings = spot.parent?.children ?? [];
  return siblings[siblings.indexOf(spot) + step];
}
