/** Claims of pawns and squares, by the pawns of each file. */
import type { Chess } from 'chessops/chess';
import type { Color } from 'chessops/types';
import {
  covering,
  file,
  isDarkSquare,
  men,
  other,
  ownRank,
  rank,
  squareNamed,
  type Truth,
  type World,
} from './world.ts';

type Judge = (world: World, words: readonly string[]) => Truth;

/** A side's pawns of a file by their own ranks. */
function ranksOn(chess: Chess, color: Color, where: number): number[] {
  return men(chess, color, 'pawn')
    .filter((square) => file(square) === where)
    .map((square) => ownRank(square, color));
}

const asColor = (word: string | undefined): Color => (word === 'black' ? 'black' : 'white');
const fileNamed = (word = '') => 'abcdefgh'.indexOf(word);
const beside = (where: number) => [where - 1, where + 1];

/** Judges the pawn on a square. */
function ofPawn(
  judge: (pawn: { chess: Chess; square: number; color: Color; at: number }) => Truth,
) {
  return ({ chess }: World, [name]: readonly string[]): Truth => {
    const square = squareNamed(name);
    const piece = chess.board.get(square);
    if (piece?.role !== 'pawn') return 'empty';
    return judge({ chess, square, color: piece.color, at: ownRank(square, piece.color) });
  };
}

function isPassed(chess: Chess, square: number): boolean {
  const color = chess.board.get(square)?.color ?? 'white';
  // An enemy pawn on its own rank r stands on rank 9 - r of this side.
  return [file(square), ...beside(file(square))].every((where) =>
    ranksOn(chess, other(color), where).every((enemy) => 9 - enemy <= ownRank(square, color)),
  );
}

/** Whether a pawn of a colour attacks a square. */
function pawnHits(chess: Chess, square: number, color: Color): boolean {
  return covering(chess, square, color).some((from) => chess.board.get(from)?.role === 'pawn');
}

/** Whether a pawn of a colour attacks a square or can come to by going straight on. */
function pawnCouldHit(chess: Chess, square: number, color: Color): boolean {
  return beside(file(square)).some((where) =>
    ranksOn(chess, color, where).some((own) => own < ownRank(square, color)),
  );
}

/** A square for a side: `good` says what the other side's pawns must not be able to do. */
function squareFor(good: (chess: Chess, square: number, color: Color) => boolean): Judge {
  return ({ chess }, [name, side]) => {
    const square = squareNamed(name);
    const piece = chess.board.get(square);
    if (piece?.role === 'pawn') return 'empty';
    const sides: readonly Color[] = side
      ? [asColor(side)]
      : piece
        ? [piece.color]
        : ['white', 'black'];
    return sides.some((color) => {
      const at = ownRank(square, color);
      return at >= 4 && at <= 7 && pawnHits(chess, square, color) && good(chess, square, color);
    });
  };
}

export function space(chess: Chess, color: Color): number {
  let sum = 0;
  for (let square = 0; square < 64; square++) {
    const at = ownRank(square, color);
    if (file(square) < 2 || file(square) > 5 || at < 2 || at > 4) continue;
    const piece = chess.board.get(square);
    if (piece?.role === 'pawn' && piece.color === color) continue;
    if (pawnHits(chess, square, other(color))) continue;
    const far = ranksOn(chess, color, file(square)).map((own) => own - at);
    sum += far.some((steps) => steps >= 1 && steps <= 3) ? 2 : 1;
  }
  return sum;
}

export function islandsOf(chess: Chess, color: Color): number {
  const has = Array.from({ length: 8 }, (_, where) => ranksOn(chess, color, where).length > 0);
  return has.filter((pawns, where) => pawns && !has[where - 1]).length;
}

const isFile = (chess: Chess, where: number, color: Color) => ranksOn(chess, color, where).length;

export const pawnClaims: Readonly<Record<string, Judge>> = {
  isolated: ofPawn(({ chess, square, color }) =>
    beside(file(square)).every((where) => isFile(chess, where, color) === 0),
  ),
  doubled: ({ chess }, [name, side]) =>
    (side ? [asColor(side)] : (['white', 'black'] as const)).some(
      (color) => isFile(chess, fileNamed(name), color) >= 2,
    ),
  backward: ofPawn(({ chess, square, color, at }) => {
    const friends = beside(file(square)).flatMap((where) => ranksOn(chess, color, where));
    const stop = square + (color === 'white' ? 8 : -8);
    return (
      friends.length > 0 && friends.every((own) => own > at) && pawnHits(chess, stop, other(color))
    );
  }),
  passed: ofPawn(({ chess, square }) => isPassed(chess, square)),
  'protected-passed': ofPawn(
    ({ chess, square, color }) => isPassed(chess, square) && pawnHits(chess, square, color),
  ),
  'connected-passed': ({ chess }, [one, two]) => {
    const squares = [one, two].map(squareNamed);
    const [a, b] = squares.map((square) => chess.board.get(square));
    if (a?.role !== 'pawn' || b?.role !== 'pawn') return 'empty';
    const [first = 0, second = 0] = squares;
    return (
      a.color === b.color &&
      Math.abs(file(first) - file(second)) === 1 &&
      isPassed(chess, first) &&
      isPassed(chess, second)
    );
  },
  'hanging-pawns': ({ chess }, [one, two]) => {
    const squares = [squareNamed(one), squareNamed(two)].sort((a, b) => file(a) - file(b));
    const [a, b] = squares.map((square) => chess.board.get(square));
    if (a?.role !== 'pawn' || b?.role !== 'pawn') return 'empty';
    const [left = 0, right = 0] = squares;
    if (a.color !== b.color) return false;
    const [start, end] = [file(left), file(right)];
    if (end - start !== 1 || start < 2 || end > 5) return false;
    if (Math.abs(rank(left) - rank(right)) > 1) return false;
    const free = [start, end].every((where) => isFile(chess, where, other(a.color)) === 0);
    const alone = [start - 1, end + 1].every((where) => isFile(chess, where, a.color) === 0);
    return free && alone;
  },
  chain: ({ chess }, names) => {
    const squares = names.map(squareNamed);
    const pieces = squares.map((square) => chess.board.get(square));
    const color = pieces[0]?.color;
    if (!color || pieces.some((piece) => piece?.role !== 'pawn')) return 'empty';
    if (pieces.some((piece) => piece?.color !== color)) return false;
    const ordered = [...squares].sort((a, b) => ownRank(a, color) - ownRank(b, color));
    return ordered.every((square, index) => {
      const behind = ordered[index - 1];
      if (behind === undefined) return true;
      return (
        ownRank(square, color) - ownRank(behind, color) === 1 &&
        Math.abs(file(square) - file(behind)) === 1
      );
    });
  },
  blockaded: ofPawn(({ chess, square, color }) => {
    const ahead = chess.board.get(square + (color === 'white' ? 8 : -8));
    return ahead !== undefined && ahead.color !== color && ahead.role !== 'pawn';
  }),
  islands: ({ chess }, [side, count]) => islandsOf(chess, asColor(side)) === Number(count),
  majority: ({ chess }, [side, where = '']) => {
    const [first, last] =
      { queenside: ['a', 'd'], kingside: ['e', 'h'] }[where] ?? where.split('-');
    const count = (color: Color) =>
      men(chess, color, 'pawn').filter(
        (square) => file(square) >= fileNamed(first) && file(square) <= fileNamed(last),
      ).length;
    return count(asColor(side)) > count(other(asColor(side)));
  },
  outpost: squareFor((chess, square, color) => !pawnCouldHit(chess, square, other(color))),
  'strong-square': squareFor((chess, square, color) => !pawnHits(chess, square, other(color))),
  'weak-square': ({ chess }, [name]) => {
    const square = squareNamed(name);
    const color = rank(square) < 4 ? 'white' : 'black';
    const piece = chess.board.get(square);
    if (ownRank(square, color) < 3 || (piece?.role === 'pawn' && piece.color === color))
      return false;
    return !pawnCouldHit(chess, square, color);
  },
  open: ({ chess }, [name]) =>
    isFile(chess, fileNamed(name), 'white') + isFile(chess, fileNamed(name), 'black') === 0,
  'half-open': ({ chess }, [name, side]) =>
    isFile(chess, fileNamed(name), asColor(side)) === 0 &&
    isFile(chess, fileNamed(name), other(asColor(side))) > 0,
  space: ({ chess }, [side, count]) => space(chess, asColor(side)) === Number(count),
  'more-space': ({ chess }, [side]) =>
    space(chess, asColor(side)) > space(chess, other(asColor(side))),
  'bad-bishop': bishop((on, off, stopped) => on > off && stopped),
  'good-bishop': bishop((on, off, stopped) => on < off && !stopped),
  fianchetto: ({ chess }, [name]) => {
    const square = squareNamed(name);
    const piece = chess.board.get(square);
    if (piece?.role !== 'bishop') return 'empty';
    const ranks = ranksOn(chess, piece.color, file(square));
    return (
      ownRank(square, piece.color) === 2 &&
      [1, 6].includes(file(square)) &&
      (ranks.includes(3) || ranks.includes(4))
    );
  },
};

function bishop(judge: (on: number, off: number, stopped: boolean) => boolean): Judge {
  return ({ chess }, [name]) => {
    const square = squareNamed(name);
    const piece = chess.board.get(square);
    if (piece?.role !== 'bishop') return 'empty';
    const pawns = men(chess, piece.color, 'pawn');
    const on = pawns.filter((pawn) => isDarkSquare(pawn) === isDarkSquare(square));
    const stopped = on.some((pawn) => {
      const ahead = chess.board.get(pawn + (piece.color === 'white' ? 8 : -8));
      return (
        'cdef'.includes('abcdefgh'[file(pawn)] ?? '-') &&
        ahead?.role === 'pawn' &&
        ahead.color !== piece.color
      );
    });
    return judge(on.length, pawns.length - on.length, stopped);
  };
}
