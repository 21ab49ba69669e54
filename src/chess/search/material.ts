/**
 * What the sides win by captures and promotions when each takes what is best for it and may stop at any
 * time (a quiescence search: Chess Programming Wiki, "Quiescence Search"). Unlike static exchange it
 * looks at the whole board, so that a piece left standing for a bigger one is none that is lost.
 */
import { type CoreMove, GameBoard } from '../core/game-board.ts';
import type { PlayedMove, Position } from '../types.ts';

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
 * What the side to move wins with any move, against the best answer with any move, and captures from then
 * on; less than 0 where it must lose something. 1000 is mate.
 */
export function wonByMoves(position: Position, budget: MaterialBudget): number {
  return new MaterialSearch(position, budget).moves(2, -mated, mated);
}

/** What a move wins for the side that plays it, against the best captures of the other side. */
export function wonBy(
  position: Position,
  { from, to, promotion }: Pick<PlayedMove, 'from' | 'to' | 'promotion'>,
  budget: MaterialBudget,
): number {
  return new MaterialSearch(position, budget).after((described) => {
    return described.from === from && described.to === to && described.promotion === promotion;
  });
}

class MaterialSearch {
  private readonly board: GameBoard;
  private readonly budget: MaterialBudget;

  constructor(position: Position, budget: MaterialBudget) {
    this.board = new GameBoard(position);
    this.budget = budget;
  }

  /** The most that the side to move wins by captures, as far as it lies between the bounds. */
  captures(low: number, high: number): number {
    let best = Math.max(0, low);
    if (best >= high) return best;
    for (const { move, worth } of this.gains()) {
      // No capture that is left wins more.
      if (worth <= best) break;
      if (!this.make(move)) continue;
      const won = worth - this.captures(worth - high, worth - best);
      this.board.unmake();
      best = Math.max(best, won);
      if (best >= high) break;
    }
    return best;
  }

  /** The most that the side to move wins with any move, of `depth` more by both sides, and captures then. */
  moves(depth: number, low: number, high: number): number {
    if (depth === 0) return this.captures(low, high);
    let best = -mated;
    let isMovable = false;
    for (const { move, worth } of this.all()) {
      if (!this.make(move)) continue;
      isMovable = true;
      const won = worth - this.moves(depth - 1, worth - high, worth - Math.max(best, low));
      this.board.unmake();
      best = Math.max(best, won);
      if (best >= high) break;
    }
    return isMovable || this.board.inCheck() ? best : 0;
  }

  after(isMove: (described: ReturnType<GameBoard['describe']>) => boolean): number {
    for (const move of this.board.moves()) {
      if (!isMove(this.board.describe(move))) continue;
      const worth = this.board.worth(move);
      if (!this.make(move)) continue;
      const lost = this.captures(0, mated);
      this.board.unmake();
      return worth - lost;
    }
    return -mated;
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
