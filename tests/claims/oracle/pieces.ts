/** Claims of pieces: what they attack, defend, pin and lose. */
import type { Chess } from 'chessops/chess';
import type { Piece } from 'chessops/types';
import { bestTaking, exchange, takes } from './exchange.ts';
import {
  covering,
  covers,
  hasWrongCross,
  inBetween,
  isDarkSquare,
  isLine,
  king,
  men,
  movesOf,
  other,
  played,
  readMoves,
  squareNamed,
  type Truth,
  takenBy,
  values,
  type World,
  withMove,
} from './world.ts';

type Judge = (world: World, words: readonly string[]) => Truth;

function ofPiece(
  judge: (chess: Chess, square: number, piece: Piece, words: readonly string[]) => Truth,
): Judge {
  return ({ chess }, [name, ...words]) => {
    const square = squareNamed(name);
    const piece = chess.board.get(square);
    return piece ? judge(chess, square, piece, words) : 'empty';
  };
}

/** A piece behind another on a line that an enemy line piece attacks along. */
function isBehind(chess: Chess, front: number, back: number, piece: Piece): boolean {
  const way = inBetween(front, back);
  if (!way || way.some((square) => chess.board.get(square))) return false;
  return men(chess, other(piece.color)).some((from) => {
    const line = chess.board.get(from);
    return (
      line && isLine(line) && covers(chess, from, front) && inBetween(from, back)?.includes(front)
    );
  });
}

const only = (chess: Chess, from: number, to: number, piece: Piece) =>
  covers(chess, from, to) && covering(chess, to, piece.color).length === 1;

function shades(chess: Chess, color: 'white' | 'black') {
  return new Set(men(chess, color, 'bishop').map(isDarkSquare));
}

/** What the legal moves of a piece come to; undefined for kings and pawns. */
function outcomes(chess: Chess, square: number, piece: Piece): number[] | undefined {
  if (piece.role === 'king' || piece.role === 'pawn') return undefined;
  const turn = withMove(chess, piece.color);
  return movesOf(turn)
    .filter(({ from }) => from === square)
    .map((move) => exchange(turn, move));
}

const isEnPrise = (chess: Chess, square: number, piece: Piece) =>
  (bestTaking(withMove(chess, other(piece.color)), square) ?? 0) > 0;

export const pieceClaims: Readonly<Record<string, Judge>> = {
  attacks: ofPiece((chess, from, piece, [to]) => {
    const target = squareNamed(to);
    return covers(chess, from, target) && chess.board.get(target)?.color !== piece.color;
  }),
  defends: ofPiece((chess, from, piece, [to]) => {
    const target = squareNamed(to);
    return covers(chess, from, target) && chess.board.get(target)?.color !== other(piece.color);
  }),
  'only-defender': ofPiece((chess, from, piece, [to]) => {
    const target = squareNamed(to);
    if (chess.board.get(target)?.color === other(piece.color)) return false;
    return only(chess, from, target, piece);
  }),
  loose: ofPiece((chess, square, piece) =>
    piece.role === 'king' ? 'empty' : covering(chess, square, piece.color).length === 0,
  ),
  defended: ofPiece((chess, square, piece) =>
    piece.role === 'king' ? 'empty' : covering(chess, square, piece.color).length > 0,
  ),
  'everything-defended': ({ chess }, [side, pieces]) =>
    men(chess, side === 'black' ? 'black' : 'white').every((square) => {
      const piece = chess.board.get(square);
      if (!piece || piece.role === 'king' || (pieces && piece.role === 'pawn')) return true;
      return covering(chess, square, piece.color).length > 0;
    }),
  'en-prise': ofPiece((chess, square, piece) =>
    piece.role === 'king' ? 'empty' : isEnPrise(chess, square, piece),
  ),
  trapped: ofPiece((chess, square, piece) => {
    const moves = outcomes(chess, square, piece);
    return moves ? isEnPrise(chess, square, piece) && moves.every((won) => won < 0) : 'empty';
  }),
  'no-square': ofPiece((chess, square, piece) => {
    const moves = outcomes(chess, square, piece);
    return moves ? moves.length > 0 && moves.every((won) => won < 0) : 'empty';
  }),
  overloaded: ofPiece((chess, square, piece) => {
    const wards = men(chess, piece.color).filter(
      (to) => chess.board.get(to)?.role !== 'king' && only(chess, square, to, piece),
    );
    const turn = withMove(chess, other(piece.color));
    return wards.some((first) =>
      movesOf(turn).some((capture) => {
        if (capture.to !== first) return false;
        const then = played(turn, capture);
        const back = movesOf(then).find(
          ({ from, to, promotion = 'queen' }) =>
            from === square && to === first && promotion === 'queen',
        );
        if (!back) return false;
        const last = played(then, back);
        const soFar = takes(turn, capture) - takes(then, back);
        return wards.some((second) => {
          const gain = second === first ? undefined : bestTaking(last, second);
          return gain !== undefined && gain > 0 && soFar + gain > 0;
        });
      }),
    );
  }),
  pinned: ofPiece((chess, square, piece, [, to]) => {
    if (piece.role === 'king') return 'empty';
    const target = to ? squareNamed(to) : king(chess, piece.color);
    const behind = chess.board.get(target);
    if (!behind) return 'empty';
    return (
      behind.color === piece.color &&
      isBehind(chess, square, target, piece) &&
      values[behind.role] > values[piece.role]
    );
  }),
  skewered: ofPiece((chess, square, piece, [, to]) => {
    const target = squareNamed(to);
    const behind = chess.board.get(target);
    if (!behind) return 'empty';
    return (
      behind.color === piece.color &&
      isBehind(chess, square, target, piece) &&
      values[behind.role] < values[piece.role]
    );
  }),
  battery: ofPiece((chess, one, piece, [to]) => {
    const two = squareNamed(to);
    const mate = chess.board.get(two);
    if (!mate || !isLine(piece) || !isLine(mate)) return 'empty';
    return piece.color === mate.color && covers(chess, one, two) && covers(chess, two, one);
  }),
  fork: ofPiece((chess, square, piece) => {
    const targets = men(chess, other(piece.color)).filter((to) => {
      const target = chess.board.get(to);
      if (!target || !covers(chess, square, to)) return false;
      const isFree = covering(chess, to, target.color).length === 0;
      return isFree || values[target.role] > values[piece.role];
    });
    return targets.length >= 2;
  }),
  'shut-in': ({ chess }, [name]) => {
    const square = squareNamed(name);
    const piece = chess.board.get(square);
    if (piece?.role !== 'bishop') return 'empty';
    return ![...Array(64).keys()].some(
      (to) => covers(chess, square, to) && chess.board.get(to)?.color !== piece.color,
    );
  },
  clear: ({ chess }, [line = '']) =>
    (inBetween(squareNamed(line.slice(0, 2)), squareNamed(line.slice(3))) ?? []).every(
      (square) => !chess.board.get(square),
    ),
  'bishop-pair': ({ chess }, [side]) => {
    const color = side === 'black' ? 'black' : 'white';
    return shades(chess, color).size === 2 && shades(chess, other(color)).size < 2;
  },
  'opposite-bishops': ({ chess }) => {
    const [white, black] = (['white', 'black'] as const).map((color) =>
      men(chess, color, 'bishop'),
    );
    if (white?.length !== 1 || black?.length !== 1) return false;
    return isDarkSquare(white[0] ?? 0) !== isDarkSquare(black[0] ?? 0);
  },
  'discovered-attack': ({ chess, before }, [one, two]) => {
    const [from, to] = [squareNamed(one), squareNamed(two)];
    const [piece, target] = [chess.board.get(from), chess.board.get(to)];
    if (!piece || !target || !before) return 'empty';
    if (piece.color === target.color || !isLine(piece) || !covers(chess, from, to)) return false;
    const same = (square: number) => {
      const [now, then] = [chess.board.get(square), before.board.get(square)];
      return now?.role === then?.role && now?.color === then?.color;
    };
    return same(from) && same(to) && !covers(before, from, to);
  },
  threatens: ({ chess }, [text = '']) => {
    if (movesOf(chess).length === 0) return 'empty';
    const turn = withMove(chess, other(chess.turn));
    const moves = readMoves(turn, text);
    const [move] = moves;
    if (!move) return false;
    if (moves.length > 1 || hasWrongCross(turn, text)) return 'empty';
    const taken = takenBy(turn, move);
    if (taken !== undefined && turn.board.get(taken)?.role === 'king') return 'empty';
    const then = played(turn, move);
    return (then.isCheck() && movesOf(then).length === 0) || exchange(turn, move) > 0;
  },
};
