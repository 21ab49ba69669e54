/** Forced mates, by search. */
import { readBoard, sideToMove, squaresOf } from '../board.ts';
import { type CoreMove, GameBoard } from '../core/game-board.ts';
import { isMoveFault, playMove } from '../play.ts';
import { Recent } from '../recent.ts';
import type { Color, Position } from '../types.ts';

/**
 * - `mate`: with its `moves`-th move from here a side mates, whatever the other plays, and it has
 *   no quicker mate. `first` is its first move in SAN where it is to move; `fewest` is this count.
 * - `none`: there is no mate within so many moves.
 * - `undecided`: the search looked at all the positions it was allowed without an answer; up to
 *   `moves` moves there is no mate.
 */
export type MateSearch =
  | { readonly result: 'mate'; readonly moves: number; readonly first?: string }
  | { readonly result: 'none' }
  | { readonly result: 'undecided'; readonly moves: number };

/** Positions that one search may look at: about a second or two. */
export const positionBudget = 5_000_000;

const recent = new Recent<string, MateSearch>(2_000);

/**
 * The quickest mate that a side can force within so many of its own moves. All moves of both
 * sides are tried; draws by repetition and by the fifty-move rule are left out of account. What it
 * looks at is taken from `all`, which several searches may share; it is not asked whether it suffices.
 */
export function findMate(
  position: Position,
  color: Color,
  moves: number,
  budget = positionBudget,
  all?: { left: number },
): MateSearch {
  const name = `${position.key}|${color}|${moves}|${budget}`;
  const known = recent.get(name);
  if (known !== undefined) return known;
  const finder = new MateFinder(position, budget);
  const found = search(finder, position, color, moves);
  if (all) all.left -= budget - finder.left;
  recent.set(name, found);
  return found;
}

function search(finder: MateFinder, position: Position, color: Color, moves: number): MateSearch {
  // A king alone never mates; to see that by search would take the whole budget.
  if (squaresOf(readBoard(position), color).length < 2) return { result: 'none' };
  try {
    for (let count = 1; count <= moves; count++) {
      if (color === sideToMove(position)) {
        const move = finder.attack(count);
        if (move !== undefined) {
          return { result: 'mate', moves: count, first: sanOf(position, move) };
        }
      } else if (finder.isLost(count)) return { result: 'mate', moves: count };
      finder.refuted = count;
    }
  } catch (error) {
    if (error instanceof BudgetSpent) return { result: 'undecided', moves: finder.refuted };
    throw error;
  }
  return { result: 'none' };
}

function sanOf(position: Position, move: CoreMove): string {
  const { from, to, promotion } = new GameBoard(position).describe(move);
  const letter = promotion === 'knight' ? 'N' : promotion?.[0]?.toUpperCase();
  const played = playMove(position, `${from}${to}${letter ? `=${letter}` : ''}`);
  if (isMoveFault(played)) throw new Error(`${from}${to} in ${position.fen}: ${played.reason}`);
  return played.san;
}

class BudgetSpent extends Error {}

class MateFinder {
  /** Up to so many moves there is no mate. */
  refuted = 0;
  /** Positions that may still be looked at. */
  left: number;
  private readonly board: GameBoard;
  /** The defence that last refuted a mate in so many moves: the first to try next time. */
  private readonly refutations: CoreMove[] = [];

  constructor(position: Position, budget: number) {
    this.board = new GameBoard(position);
    this.left = budget;
  }

  /** A move of the side to move that mates with its `count`-th move at the latest. */
  attack(count: number): CoreMove | undefined {
    const quiet: CoreMove[] = [];
    for (const move of this.board.moves()) {
      if (!this.make(move)) continue;
      const check = this.board.inCheck();
      if (!check) quiet.push(move);
      const mates = check && this.isLost(count - 1);
      this.board.unmake();
      if (mates) return move;
    }
    if (count < 2) return undefined;
    // Checks first, then the rest: most mates in opening books are a row of checks.
    for (const move of quiet) {
      this.board.make(move);
      const mates = this.isLost(count - 1);
      this.board.unmake();
      if (mates) return move;
    }
    return undefined;
  }

  /** Whether the side to move is mated, or will be with the other's `count`-th move at the latest. */
  isLost(count: number): boolean {
    const refutation = this.refutations[count];
    let legal = 0;
    const moves = this.board.moves();
    if (refutation !== undefined && count > 0 && moves.includes(refutation)) {
      moves.unshift(refutation);
    }
    for (const move of moves) {
      if (!this.make(move)) continue;
      legal++;
      const escapes = count === 0 || this.attack(count) === undefined;
      this.board.unmake();
      if (escapes) {
        this.refutations[count] = move;
        return false;
      }
    }
    return legal > 0 || this.board.inCheck();
  }

  private make(move: CoreMove): boolean {
    if (this.left-- <= 0) throw new BudgetSpent();
    return this.board.make(move);
  }
}
