/**
 * How an asked move was found: at once; slowly or with a hint; after a wrong try; or not at all,
 * so that it was shown.
 */
export const hows = ['known', 'slow', 'wrong', 'shown'] as const;
export type How = (typeof hows)[number];

/** What a reader knows of one position where the course advises a move. Kept as it is. */
export interface Item {
  /** `Position.key`. */
  readonly key: string;
  /** Canonical SAN of the advice that was asked; other advice is asked anew. */
  readonly advice: string;
  /** Days, as `dayOf` counts them: of the last answer that counted, and when it is asked next. */
  readonly last: number;
  readonly due: number;
  /** Of memory, as FSRS has them: days until 9 of 10 would still know it, and 1 to 10. */
  readonly stability: number;
  readonly difficulty: number;
  /** Answers that counted, and those of them that were wrong or had to be shown. */
  readonly answers: number;
  readonly misses: number;
  /** When it was answered last, ms since 1970. */
  readonly at: number;
  /** The last answers, the latest at the end. */
  readonly history: readonly (readonly [day: number, how: How])[];
}

/** A clock may be put right, or a reader travel; more than this ahead, a time is not believed. */
const dayAndNight = 2 * 86_400_000;

/** When it was answered last, as far as that can be believed; else the beginning of time. */
export function credibleTime({ at }: Item, now: number): number {
  return at <= now + dayAndNight ? at : 0;
}

/** Which of two records of one position holds the later answer. */
export function laterOf(a: Item, b: Item, now: number): Item {
  const [atA, atB] = [credibleTime(a, now), credibleTime(b, now)];
  if (atA !== atB) return atA > atB ? a : b;
  return b.answers > a.answers ? b : a;
}

/** Puts an item among others, unless they have a later record of its position. */
export function keepLater(items: Map<string, Item>, item: Item, now: number): void {
  const kept = items.get(item.key);
  items.set(item.key, kept === undefined ? item : laterOf(kept, item, now));
}
