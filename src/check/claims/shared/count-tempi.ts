/** Tempi: the fewest moves that bring a side's pieces from one placement to another. */
import {
  attacksFrom,
  type Board,
  type Color,
  fileOf,
  isDark,
  type Piece,
  type PieceKind,
  type Position,
  pieceKinds,
  rankOf,
  readBoard,
  relativeRank,
  type Square,
  squaresOf,
} from '../../../chess/index.ts';
import { castlingRights, type Wing } from './castling.ts';

type Homes = Readonly<Record<PieceKind, readonly Square[]>>;

/** See the claim `tempi`; absent where no moves without a promotion lead there. */
export function countTempi(from: Position, to: Position, color: Color): number | undefined {
  const now = homesOf(readBoard(to), color);
  const starts = [
    { moves: 0, homes: homesOf(readBoard(from), color) },
    ...castlingRights(from, color).map((wing) => ({
      moves: 1,
      homes: castledHomes(homesOf(readBoard(from), color), color, wing),
    })),
  ];
  const counts = starts.map(({ moves, homes }) =>
    pieceKinds.reduce((sum, kind) => sum + fewest(homes[kind], now[kind], { kind, color }), moves),
  );
  const least = Math.min(...counts);
  return Number.isFinite(least) ? least : undefined;
}

function homesOf(board: Board, color: Color): Homes {
  return Object.fromEntries(
    pieceKinds.map((kind) => [kind, squaresOf(board, color, kind)]),
  ) as unknown as Homes;
}

function castledHomes(homes: Homes, color: Color, wing: Wing): Homes {
  const rank = color === 'white' ? 1 : 8;
  const [corner, beside, king] = wing === 'king' ? ['h', 'f', 'g'] : ['a', 'd', 'c'];
  return {
    ...homes,
    king: [`${king}${rank}`],
    rook: homes.rook.map((square) => (square === `${corner}${rank}` ? `${beside}${rank}` : square)),
  };
}

/** The fewest moves of pieces of a kind from their homes to where some of them stand now. */
function fewest(homes: readonly Square[], now: readonly Square[], piece: Piece): number {
  const known = new Map<string, number>();
  const assign = (index: number, used: number): number => {
    const to = now[index];
    if (to === undefined) return 0;
    const name = `${index} ${used}`;
    let least = known.get(name);
    if (least === undefined) {
      least = Number.POSITIVE_INFINITY;
      for (const [home, from] of homes.entries()) {
        if (used & (1 << home)) continue;
        const moves = movesFrom(piece, from, to);
        if (moves < least) least = Math.min(least, moves + assign(index + 1, used | (1 << home)));
      }
      known.set(name, least);
    }
    return least;
  };
  return assign(0, 0);
}

/** The fewest moves of a piece on an empty board. */
function movesFrom(piece: Piece, from: Square, to: Square): number {
  if (from === to) return 0;
  const [aside, ahead] = [Math.abs(fileOf(to) - fileOf(from)), Math.abs(rankOf(to) - rankOf(from))];
  switch (piece.kind) {
    case 'king':
      return Math.max(aside, ahead);
    case 'knight':
      return knightMoves(piece, from, to);
    case 'bishop':
      if (isDark(from) !== isDark(to)) return Number.POSITIVE_INFINITY;
      return aside === ahead ? 1 : 2;
    case 'rook':
      return aside === 0 || ahead === 0 ? 1 : 2;
    case 'queen':
      return aside === 0 || ahead === 0 || aside === ahead ? 1 : 2;
    case 'pawn': {
      const steps = relativeRank(to, piece.color) - relativeRank(from, piece.color);
      if (steps < 1 || aside > steps) return Number.POSITIVE_INFINITY;
      // Two steps at once, where no capture is needed for both.
      const double = relativeRank(from, piece.color) === 2 && steps - aside >= 2;
      return double ? steps - 1 : steps;
    }
  }
}

function knightMoves(piece: Piece, from: Square, to: Square): number {
  let reached = new Set([from]);
  for (let moves = 0; ; moves++) {
    if (reached.has(to)) return moves;
    reached = new Set([...reached].flatMap((at) => attacksFrom(new Map([[at, piece]]), at)));
  }
}
