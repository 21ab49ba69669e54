import type { Item } from '../store/item.ts';

type Dates = Pick<Item, 'advice' | 'due' | 'last'>;

/** A move that is asked next in a week or later is known. */
const knownFrom = 7;

/** `changed`: learnt, but the course has other advice there now. */
export type ItemState = 'unmet' | 'changed' | 'met' | 'known';

export function itemState(item: Dates | undefined, advice: readonly string[]): ItemState {
  if (item === undefined) return 'unmet';
  if (!advice.includes(item.advice)) return 'changed';
  return item.due - item.last >= knownFrom ? 'known' : 'met';
}

/** Whether an item is to be asked today: it is due, or the course has changed its advice. */
export function isDue(item: Dates | undefined, advice: readonly string[], today: number): boolean {
  if (item === undefined) return false;
  if (!advice.includes(item.advice)) return true;
  return dueDay(item, today) <= today;
}

/**
 * The day on which an item is asked. An answer from the day after tomorrow or later was given by
 * a wrong clock: it is asked now, and that puts it right.
 */
export function dueDay({ due, last }: Pick<Item, 'due' | 'last'>, today: number): number {
  return last > today + 1 ? today : due;
}
