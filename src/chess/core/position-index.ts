import { GameBoard } from './game-board.ts';

interface Entry {
  readonly board: GameBoard;
  readonly place: number;
}

/** Looks up the position on a board among many, without writing its key. */
export class PositionIndex {
  readonly #entries = new Map<number, Entry[]>();

  /** @param keys `Position.key` of each; they are counted from 0, and of two that are equal the first counts. */
  constructor(keys: Iterable<string>) {
    let place = 0;
    for (const key of keys) {
      const board = new GameBoard({ fen: `${key} 0 1` });
      const entry = { board, place };
      const others = this.#entries.get(board.signature());
      if (others) others.push(entry);
      else this.#entries.set(board.signature(), [entry]);
      place += 1;
    }
  }

  /** The place among the keys of the key that the board would have; undefined where it is none. */
  find(board: GameBoard): number | undefined {
    const entries = this.#entries.get(board.signature());
    if (entries === undefined) return undefined;
    for (const entry of entries) if (entry.board.isAs(board)) return entry.place;
    return undefined;
  }
}
