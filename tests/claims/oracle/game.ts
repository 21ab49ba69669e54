/** Claims of the game: material, mates, castling, development. */
import { Chess } from 'chessops/chess';
import type { Color, Role } from 'chessops/types';
import { forcesMate, isMatedIn, mostWon, takes } from './exchange.ts';
import {
  covering,
  file,
  hasWrongCross,
  king,
  men,
  movesOf,
  other,
  ownRank,
  played,
  rank,
  readMove,
  readMoves,
  sanOf,
  type Truth,
  values,
  type World,
  withMove,
} from './world.ts';

type Judge = (world: World, words: readonly string[]) => Truth;

const asColor = (word: string | undefined): Color => (word === 'black' ? 'black' : 'white');
const wingsOf = (wing: string | undefined) => (wing ? [wing] : ['king', 'queen']);

function count(chess: Chess, color: Color): number {
  return men(chess, color).reduce((sum, square) => {
    const role = chess.board.get(square)?.role;
    return sum + (role && role !== 'king' ? values[role] : 0);
  }, 0);
}

function balance(chess: Chess, side: Color | 'both'): number {
  const color = side === 'black' ? 'black' : 'white';
  return count(chess, color) - count(chess, other(color));
}

function hasRight(chess: Chess, color: Color, wing: string): boolean {
  const corner = (color === 'white' ? 0 : 56) + (wing === 'king' ? 7 : 0);
  return chess.castles.castlingRights.has(corner);
}

/** The wing of a castled king; undefined where it is not castled. */
function castledTo(chess: Chess, color: Color): 'king' | 'queen' | undefined {
  const square = king(chess, color);
  if (ownRank(square, color) !== 1) return undefined;
  if (hasRight(chess, color, 'king') || hasRight(chess, color, 'queen')) return undefined;
  const wing = { a: 'queen', b: 'queen', c: 'queen', g: 'king', h: 'king' }[
    'abcdefgh'[file(square)] ?? ''
  ] as 'king' | 'queen' | undefined;
  const isShutIn = men(chess, color, 'rook').some(
    (rook) =>
      rank(rook) === rank(square) &&
      (wing === 'king' ? file(rook) > file(square) : file(rook) < file(square)),
  );
  return isShutIn ? undefined : wing;
}

export function developed(chess: Chess, color: Color): number {
  return [...men(chess, color, 'knight'), ...men(chess, color, 'bishop')].filter(
    (square) => ownRank(square, color) !== 1 || !'bcfg'.includes('abcdefgh'[file(square)] ?? '-'),
  ).length;
}

const checkers = (chess: Chess) => covering(chess, king(chess, chess.turn), other(chess.turn));

/** The fewest moves on an empty board, by trying all. */
function steps(role: Role, color: Color, from: number, to: number): number {
  let reached = new Set([from]);
  for (let moves = 0; moves < 9; moves++) {
    if (reached.has(to)) return moves;
    reached = new Set([...reached].flatMap((square) => oneMove(role, color, square)));
  }
  return Number.POSITIVE_INFINITY;
}

/** Whether a man goes so, by how far aside, up or down, and ahead as its side sees it. */
const goes: Readonly<
  Record<Role, (aside: number, up: number, ahead: number, fromRank: number) => boolean>
> = {
  king: (aside, up) => Math.max(aside, up) === 1,
  knight: (aside, up) => aside * up === 2,
  bishop: (aside, up) => aside === up,
  rook: (aside, up) => aside * up === 0,
  queen: (aside, up) => aside === up || aside * up === 0,
  pawn: (aside, _, ahead, fromRank) =>
    (ahead === 1 && aside <= 1) || (ahead === 2 && aside === 0 && fromRank === 2),
};

function oneMove(role: Role, color: Color, from: number): number[] {
  const all = [...Array(64).keys()].filter((to) => to !== from);
  return all.filter((to) => {
    const [df, dr] = [Math.abs(file(to) - file(from)), Math.abs(rank(to) - rank(from))];
    return goes[role](df, dr, ownRank(to, color) - ownRank(from, color), ownRank(from, color));
  });
}

const stepsKnown = new Map<string, number>();
function stepsOnce(role: Role, color: Color, from: number, to: number): number {
  const name = `${role}${role === 'pawn' ? color : ''} ${from} ${to}`;
  const known = stepsKnown.get(name) ?? steps(role, color, from, to);
  stepsKnown.set(name, known);
  return known;
}

/** Every way to give the pieces homes, the cheapest kept: branch and bound. */
function cheapest(role: Role, color: Color, homes: number[], now: number[]): number {
  let best = Number.POSITIVE_INFINITY;
  const go = (index: number, left: readonly number[], sum: number) => {
    if (sum >= best) return;
    const to = now[index];
    if (to === undefined) {
      best = sum;
      return;
    }
    for (const home of left) {
      go(
        index + 1,
        left.filter((each) => each !== home),
        sum + stepsOnce(role, color, home, to),
      );
    }
  };
  go(0, homes, 0);
  return best;
}

export function tempi(from: Chess, to: Chess, color: Color): number {
  const roles = ['king', 'queen', 'rook', 'bishop', 'knight', 'pawn'] as const;
  const total = (castle?: 'king' | 'queen') => {
    const first = color === 'white' ? 0 : 56;
    let sum = castle ? 1 : 0;
    for (const role of roles) {
      let homes = men(from, color, role);
      if (castle && role === 'king') homes = [first + (castle === 'king' ? 6 : 2)];
      if (castle && role === 'rook') {
        const corner = first + (castle === 'king' ? 7 : 0);
        homes = homes.map((home) => (home === corner ? first + (castle === 'king' ? 5 : 3) : home));
      }
      sum += cheapest(role, color, homes, men(to, color, role));
    }
    return sum;
  };
  const castles = (['king', 'queen'] as const).filter((wing) => hasRight(from, color, wing));
  return Math.min(total(), ...castles.map(total));
}

function judgeMate({ chess }: World, [, number, side]: readonly string[]): Truth {
  if (movesOf(chess).length === 0) return 'empty';
  const moves = Number(number);
  const can = (color: Color, within: number) =>
    within > 0 && (color === chess.turn ? forcesMate(chess, within) : isMatedIn(chess, within));
  const sides = side ? [asColor(side)] : [chess.turn, other(chess.turn)];
  for (const color of sides) {
    if (!can(color, moves)) continue;
    return can(color, moves - 1) ? 'empty' : true;
  }
  return false;
}

function judgeOnlyMove({ chess }: World, words: readonly string[]): Truth {
  const at = words.indexOf('else');
  const margin = at < 0 ? undefined : -Number(words[at + 1]);
  const text = words[0] === 'else' ? undefined : words[0];
  const moves = movesOf(chess);
  if (moves.length === 0) return 'empty';
  const named = text === undefined ? undefined : readMove(chess, text);
  if (text !== undefined && !named) return 'empty';
  const fits = (move: (typeof moves)[number] | undefined) =>
    move !== undefined && (!named || sanOf(chess, named) === sanOf(chess, move));
  if (moves.length === 1) return fits(moves[0]);
  const safe = moves.filter((move) => !forcesMate(played(chess, move), 2));
  if (margin === undefined) return safe.length === 1 && fits(safe[0]);
  const rated = safe
    .map((move) => ({ move, won: takes(chess, move) - mostWon(played(chess, move)) }))
    .sort((one, two) => two.won - one.won);
  const [best, next] = rated;
  if (!best) return false;
  return (!next || next.won <= best.won - margin) && fits(best.move);
}

/** A text that may mean two moves, or has an x too many or too few, is neither legal nor illegal. */
function isLegal(chess: Chess, text: string): Truth {
  const moves = readMoves(chess, text);
  return moves.length > 1 || hasWrongCross(chess, text) ? 'empty' : moves.length === 1;
}

export const gameClaims: Readonly<Record<string, Judge>> = {
  material: ({ chess, side, labelled }, [pawns, since, name]) => {
    if (!since) return balance(chess, side) === Number(pawns);
    const then = labelled(name ?? '');
    return then ? balance(chess, side) - balance(then, side) === Number(pawns) : 'empty';
  },
  check: ({ chess }) => checkers(chess).length > 0,
  'double-check': ({ chess }) => checkers(chess).length > 1,
  'discovered-check': ({ chess, before }) => {
    if (!before) return 'empty';
    return checkers(chess).some((square) => {
      const [now, then] = [chess.board.get(square), before.board.get(square)];
      return now?.role === then?.role && now?.color === then?.color;
    });
  },
  mate: (world, words) =>
    words[0] === 'in'
      ? judgeMate(world, words)
      : world.chess.isCheck() && movesOf(world.chess).length === 0,
  stalemate: ({ chess }) => !chess.isCheck() && movesOf(chess).length === 0,
  'only-move': judgeOnlyMove,
  legal: ({ chess }, [text = '']) => isLegal(chess, text),
  illegal: ({ chess }, [text = '']) => {
    const legal = isLegal(chess, text);
    return legal === 'empty' ? legal : !legal;
  },
  'can-castle': ({ chess }, [side, wing]) => {
    const turn = withMove(chess, asColor(side));
    return readMove(turn, wing === 'king' ? 'O-O' : 'O-O-O') !== undefined;
  },
  'lost-castling': ({ chess, castled }, [side, wing]) =>
    wingsOf(wing).every((each) => !hasRight(chess, asColor(side), each)) &&
    !castled.includes(asColor(side)),
  castled: ({ chess }, [side, wing]) => {
    const found = castledTo(chess, asColor(side));
    return found !== undefined && (!wing || wing === found);
  },
  shield: ({ chess }, [side, number]) => {
    const color = asColor(side);
    if (!castledTo(chess, color)) return 'empty';
    const home = file(king(chess, color));
    const held = [home - 1, home, home + 1].filter((where) =>
      men(chess, color, 'pawn').some((pawn) => file(pawn) === where && ownRank(pawn, color) <= 3),
    );
    return held.length === Number(number);
  },
  development: ({ chess, labelled }, [side, number, since, name]) => {
    const now = developed(chess, asColor(side));
    if (!since) return now === Number(number);
    const then = labelled(name ?? '');
    return then ? now - developed(then, asColor(side)) === Number(number) : 'empty';
  },
  'development-lead': ({ chess }, [side, number]) => {
    const lead = developed(chess, asColor(side)) - developed(chess, other(asColor(side)));
    return number ? lead === Number(number) : lead > 0;
  },
  tempi: ({ chess, labelled }, [side, number, since, name]) => {
    const from = since ? labelled(name ?? '') : Chess.default();
    if (!from) return 'empty';
    const found = tempi(from, chess, asColor(side));
    return Number.isFinite(found) ? found === Number(number) : 'empty';
  },
  'queens-off': ({ chess }) =>
    men(chess, 'white', 'queen').length + men(chess, 'black', 'queen').length === 0,
  replies: ({ chess, side, covered }, [number]) =>
    side === chess.turn ? 'empty' : covered === Number(number),
};
