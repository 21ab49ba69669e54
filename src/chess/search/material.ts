/**
 * What the sides win by captures and promotions when each takes what is best for it and may stop at any
 * time (a quiescence search: Chess Programming Wiki, "Quiescence Search"). Unlike static exchange it
 * looks at the whole board, so that a piece left standing for a bigger one is none that is lost.
 */
import { type CoreMove, GameBoard } from '../core/game-board.ts';
import type { Position } from '../types.ts';

/** How many positions may still be looked at. Where none is left, what is found holds no more. */
export interface MaterialBudget {
  left: number;
}

/** A mated side has lost more than all material. */
const mated = 1000;

/** What the side to move wins by captures, in pawns: 0 where there is nothing, or where it better stops. */
export function wonByCaptures(position: Position, budget: MaterialBudget): number {
  return new MaterialSearch(position, budget).captures(0, mated);
}

/**
 * What the side to move wins with its best move: `plies` moves are tried in full, captures alone from then
 * on. Less than 0 where it must lose something; 1000 is mate, and -1000 that it is mated.
 */
export function wonByMoves(position: Position, plies: 1 | 2, budget: MaterialBudget): number {
  return new MaterialSearch(position, budget).moves(plies, -mated, mated);
}

class MaterialSearch {
  private readonly board: GameBoard;
  private readonly budget: MaterialBudget;

  constructor(position: Position, budget: MaterialBudget) {
    this.board = new GameBoard(position);
    this.budget = budget;
  }

  /**
   * The most that the side to move wins by captures, as far as it lies between the bounds. Who is in check
   * may not stop, but gets out of it with any move, once in a line.
   */
  captures(low: number, high: number, evades = true): number {
    if (evades && this.board.inCheck()) return this.moves(1, low, high, false);
    let best = Math.max(0, low);
    if (best >= high) return best;
    for (const { move, worth } of this.gains()) {
      // No capture that is left wins more.
      if (worth <= best) break;
      if (!this.make(move)) continue;
      const won = worth - this.captures(worth - high, worth - best, evades);
      this.board.unmake();
      best = Math.max(best, won);
      if (best >= high) break;
    }
    return best;
  }

  /** The most that the side to move wins with any move, of `depth` more by both sides, and captures then. */
  moves(depth: number, low: number, high: number, evades = true): number {
    if (depth === 0) return this.captures(low, high, evades);
    let best = -mated;
    let isMovable = false;
    for (const { move, worth } of this.all()) {
      if (!this.make(move)) continue;
      isMovable = true;
      const rest = this.moves(depth - 1, worth - high, worth - Math.max(best, low), evades);
      const won = worth - rest;
      this.board.unmake();
      best = Math.max(best, won);
      if (best >= high) break;
    }
    return isMovable || this.board.inCheck() ? best : 0;
  }

  private make(move: CoreMove): boolean {
    this.budget.left--;
    return this.budget.left > 0 && this.board.make(move);
  }

  private gains(): { readonly move: CoreMove; readonly worth: number }[] {
    return this.all().filter(({ worth }) => worth > 0);
  }

  /** What wins most at once first. */
  private all(): { readonly move: CoreMove; readonly worth: number }[] {
    return this.board
      .moves()
      .map((move) => ({ move, worth: this.board.worth(move) }))
      .sort((one, other) => other.worth - one.worth);
  }
}
