/** Ids that every page has already: its text, and the symbols that boards are drawn with. */
const ofThePage: ReadonlySet<string> = new Set([
  'page-text',
  ...['white', 'black', 'bare'].map((board) => `board-${board}`),
  ...['white', 'black'].flatMap((side) => [`turn-${side}-up`, `turn-${side}-down`]),
  ...['w', 'b'].flatMap((side) => [...'kqrbnp'].map((kind) => `piece-${side}${kind}`)),
]);

/** Gives out the ids of a page: each once, and none that the page has itself. */
export class IdGiver {
  readonly #taken: Set<string>;
  /** For a wish that was met before, the last number that was put behind it. */
  readonly #numbers: Map<string, number>;

  constructor(taken: Iterable<string> = [], numbers: Iterable<readonly [string, number]> = []) {
    this.#taken = new Set(taken);
    this.#numbers = new Map(numbers);
  }

  has(id: string): boolean {
    return this.#taken.has(id);
  }

  /** `wish`, else `wish-2`, … */
  give(wish: string): string {
    let id = wish;
    let count = this.#numbers.get(wish) ?? 1;
    while (id === '' || this.#taken.has(id) || ofThePage.has(id)) {
      count++;
      id = `${wish === '' ? 'x' : wish}-${count}`;
    }
    this.#numbers.set(wish, count);
    this.#taken.add(id);
    return id;
  }

  /** Another giver that knows what was given so far. */
  copy(): IdGiver {
    return new IdGiver(this.#taken, this.#numbers);
  }
}
