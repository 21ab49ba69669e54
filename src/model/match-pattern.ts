import { type Piece, readBoard, type Square } from '../chess/index.ts';
import type { GraphPosition, PatternBlock, PatternMatch } from './types.ts';

type Placement = Pick<PatternBlock, 'pieces' | 'empty' | 'reversed'>;

/** Whether a board has the pattern, as it stands or with the colours exchanged. */
export function matchPattern(
  pattern: Placement,
  board: ReadonlyMap<Square, Piece>,
): { reversed: boolean } | undefined {
  if (holds(pattern, board, false)) return { reversed: false };
  return pattern.reversed && holds(pattern, board, true) ? { reversed: true } : undefined;
}

/** Exchanging colours turns the board upside down: `d4` of White's becomes `d5` of Black's. */
function holds(pattern: Placement, board: ReadonlyMap<Square, Piece>, reversed: boolean): boolean {
  const at = (square: Square) =>
    reversed ? `${square.charAt(0)}${9 - Number(square.charAt(1))}` : square;
  return (
    pattern.pieces.every(({ color, kind, square }) => {
      const piece = board.get(at(square));
      return piece?.kind === kind && (piece.color === color) !== reversed;
    }) && pattern.empty.every((square) => !board.has(at(square)))
  );
}

/** Every position of the course that has the pattern, in the order of the course. */
export function findPattern(
  pattern: Placement,
  graph: Readonly<Record<string, GraphPosition>>,
): PatternMatch[] {
  return Object.values(graph).flatMap((position) => {
    const match = matchPattern(pattern, readBoard(position));
    return match ? [{ key: position.key, ...match }] : [];
  });
}
