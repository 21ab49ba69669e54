import { numberSign } from '../../chess/letters.ts';
import type { Color, Square } from '../../chess/types.ts';
import type { BoardArrow } from '../../draw/arrows.ts';
import { applyMove } from './apply-move.ts';

/** A line of moves that a board outside the course shows. */
export interface EmbeddedLine {
  /** The start, then the position after each move. */
  readonly positions: readonly EmbeddedPosition[];
  /** Index of the position that is shown first. */
  readonly at: number;
  readonly view: Color;
  /** Marks and arrows of the position that is shown first. */
  readonly marks: readonly Square[];
  readonly arrows: readonly BoardArrow[];
}

export interface EmbeddedPosition {
  readonly placement: string;
  readonly turn: Color;
  /** The move that led here; absent at the start. */
  readonly move?: { readonly from: Square; readonly to: Square; readonly name: string };
}

const initial = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1';

/**
 * Reads the attributes of the element: `fen` (else the initial position), `moves` in UCI notation,
 * `sans` the same moves as they are printed, `at` how many moves are played first, `view`, `mark`,
 * `plan`, `threat` and `guard`. A line ends before a move that cannot be read.
 */
export function readLine(attribute: (name: string) => string | null): EmbeddedLine {
  const words = (name: string) =>
    (attribute(name) ?? '').split(/[\s,]+/).filter((word) => word !== '');
  const [start = '', side = 'w', , , , count = '1'] = (attribute('fen') ?? initial)
    .trim()
    .split(/\s+/);
  const sans = words('sans');
  const positions: EmbeddedPosition[] = [
    { placement: start, turn: side === 'b' ? 'black' : 'white' },
  ];
  let ply = Number(count) * 2 + (side === 'b' ? 1 : 0);
  for (const [index, move] of words('moves').entries()) {
    const placement = applyMove(positions.at(-1)?.placement ?? start, move);
    if (placement === undefined) break;
    const [from, to] = [move.slice(0, 2), move.slice(2, 4)];
    const sign = numberSign({ number: ply >> 1, color: ply % 2 === 0 ? 'white' : 'black' });
    const name = sign + (sans[index] ?? `${from}-${to}`);
    ply += 1;
    positions.push({
      placement,
      turn: ply % 2 === 0 ? 'white' : 'black',
      move: { from, to, name },
    });
  }
  const at = Number(attribute('at') ?? 0);
  return {
    positions,
    at: Number.isInteger(at) ? Math.min(Math.max(at, 0), positions.length - 1) : 0,
    view: attribute('view') === 'black' ? 'black' : 'white',
    marks: words('mark').filter((square) => /^[a-h][1-8]$/.test(square)),
    arrows: (['plan', 'threat', 'guard'] as const).flatMap((meaning) =>
      words(meaning)
        .map((arrow) => /^([a-h][1-8])-?([a-h][1-8])$/.exec(arrow))
        .flatMap((found) =>
          found?.[1] && found[2] && found[1] !== found[2]
            ? [{ meaning, from: found[1], to: found[2] }]
            : [],
        ),
    ),
  };
}
