import type { Color, PieceKind, Position, Square } from '../../chess/index.ts';
import type { GraphPosition, PatternBlock, PatternMatch } from '../types.ts';

type Placement = Pick<PatternBlock, 'pieces' | 'empty' | 'reversed'>;

/** Whether a position matches the pattern, as written or with colours exchanged. */
export function matchPattern(
  pattern: Placement,
  position: Pick<Position, 'key'>,
): { reversed: boolean } | undefined {
  const board = spread(position);
  if (holds(pattern, board, false)) return { reversed: false };
  return pattern.reversed && holds(pattern, board, true) ? { reversed: true } : undefined;
}

const spreads = new WeakMap<object, string>();

/** The rows of a position's key with a point for each empty square, made once for a position object. */
function spread(position: Pick<Position, 'key'>): string {
  const known = spreads.get(position);
  if (known !== undefined) return known;
  const { key } = position;
  const rows = key.slice(0, key.indexOf(' '));
  const made = rows.replace(/[1-8]/g, (count) => points[Number(count)] ?? '');
  spreads.set(position, made);
  return made;
}

const points = Array.from({ length: 9 }, (_, count) => '.'.repeat(count));

/** Exchanging colours turns the board upside down: `d4` of White's becomes `d5` of Black's. */
function holds({ pieces, empty }: Placement, board: string, reversed: boolean): boolean {
  return (
    pieces.every(({ color, kind, square }) => {
      const isWhite = (color === 'white') !== reversed;
      return signOn(board, square, reversed) === letterOf(kind, isWhite ? 'white' : 'black');
    }) && empty.every((square) => signOn(board, square, reversed) === '.')
  );
}

function signOn(board: string, square: Square, reversed: boolean): string {
  const rank = Number(square.charAt(1));
  // A rank takes nine characters: eight squares and a slash.
  const row = reversed ? rank - 1 : 8 - rank;
  return board.charAt(row * 9 + square.charCodeAt(0) - 'a'.charCodeAt(0));
}

function letterOf(kind: PieceKind, color: Color): string {
  const letter = letters[kind];
  return color === 'white' ? letter.toUpperCase() : letter;
}

const letters: Readonly<Record<PieceKind, string>> = {
  king: 'k',
  queen: 'q',
  rook: 'r',
  bishop: 'b',
  knight: 'n',
  pawn: 'p',
};

/** Every position of the course that matches the pattern, in the order of the course. */
export function findPattern(
  pattern: Placement,
  graph: Readonly<Record<string, GraphPosition>>,
): PatternMatch[] {
  return Object.values(graph).flatMap((position) => {
    const match = matchPattern(pattern, position);
    return match ? [{ key: position.key, ...match }] : [];
  });
}
