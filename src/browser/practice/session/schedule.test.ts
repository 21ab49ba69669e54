import { createEmptyCard, fsrs, Rating } from 'ts-fsrs';
import { describe, expect, test } from 'vitest';
import type { How, Item } from '../store/item.ts';
import { laterOf } from '../store/item.ts';
import { dayOf } from './day.ts';
import { dueDay, isDue, itemState } from './item-state.ts';
import { answered } from './schedule.ts';

const asked = { key: 'k', advice: ['e4'] };
const hour = 3_600_000;
const day = 24 * hour;
const noon = new Date(2026, 2, 10, 12).getTime();

/** Answers on the days when the item is due. */
function over(hows: readonly How[], from = noon): Item[] {
  const items: Item[] = [];
  let now = from;
  for (const how of hows) {
    const item = answered(items.at(-1), asked, how, now);
    items.push(item);
    now += (item.due - item.last) * day;
  }
  return items;
}
const gaps = (items: readonly Item[]) => items.map(({ due, last }) => due - last);

describe('a day', () => {
  test('begins at four by the local clock', () => {
    const at = (hours: number, minutes = 0) =>
      dayOf(new Date(2026, 2, 10, hours, minutes).getTime());
    expect(at(3, 59)).toBe(at(12) - 1);
    expect(at(4)).toBe(at(12));
    expect(at(23, 59)).toBe(at(12));
  });

  test('is one day, also when the clocks are put forward', () => {
    const days = Array.from({ length: 366 }, (_, n) =>
      dayOf(new Date(2026, 0, 1 + n, 12).getTime()),
    );
    expect(days.every((each, n) => n === 0 || each === (days[n - 1] ?? 0) + 1)).toBe(true);
  });
});

describe('the schedule', () => {
  test('is that of FSRS in whole days (ts-fsrs used by itself)', () => {
    const scheduler = fsrs({ enable_short_term: false, maximum_interval: 365 });
    const ratings = [Rating.Good, Rating.Good, Rating.Hard, Rating.Good] as const;
    let card = createEmptyCard(new Date(0));
    const days = ratings.map((rating) => {
      card = scheduler.next(card, card.due, rating).card;
      return card.scheduled_days;
    });
    expect(gaps(over(['known', 'known', 'slow', 'known']))).toEqual(days);
  });

  test('asks what is known ever later, but once a year at least', () => {
    const days = gaps(over(Array(12).fill('known')));
    for (const [n, gap] of days.entries()) expect(gap).toBeGreaterThanOrEqual(days[n - 1] ?? 1);
    expect(days[0]).toBeLessThanOrEqual(4);
    expect(days.at(-1)).toBe(365);
  });

  test('asks sooner what was slow, and tomorrow what was missed, however well it was known', () => {
    const [known = 0] = gaps(over(['known']));
    const [slow = 0] = gaps(over(['slow']));
    expect(slow).toBeLessThan(known);
    expect(gaps(over(['wrong']))).toEqual([1]);
    expect(gaps(over(['shown']))).toEqual([1]);
    expect(gaps(over(['known', 'known', 'known', 'known', 'wrong'])).at(-1)).toBe(1);
  });

  test('counts a move that is known twice a day once, one that is missed always', () => {
    const [first] = over(['known']);
    expect(answered(first, asked, 'known', noon + hour)).toBe(first);
    expect(answered(first, asked, 'wrong', noon + hour)).toMatchObject({ misses: 1, answers: 2 });
  });

  test('keeps ten answers', () => {
    const item = over(Array(15).fill('known')).at(-1);
    expect(item?.history).toHaveLength(10);
    expect(item?.answers).toBe(15);
  });

  test('asks changed advice anew and keeps what was', () => {
    const [item] = over(['known']);
    const other = { ...asked, advice: ['d4'] };
    expect(itemState(item, other.advice)).toBe('changed');
    expect(isDue(item, other.advice, item?.last ?? 0)).toBe(true);
    const anew = answered(item, other, 'known', noon + 30 * day);
    expect(anew).toMatchObject({ advice: 'd4', answers: 1 });
    expect(gaps([anew])).toEqual(gaps(over(['known'])));
    expect(anew.history).toHaveLength(2);
  });
});

describe('a clock that was wrong', () => {
  const [learnt] = over(['known', 'known']).slice(-1);

  test('years ahead: the move is asked now, and its memory is not made better by it', () => {
    const ahead = answered(learnt, asked, 'known', noon + 2000 * day);
    const today = dayOf(noon + 20 * day);
    expect(isDue(ahead, asked.advice, today)).toBe(true);
    expect(dueDay(ahead, today)).toBe(today);
    const healed = answered(ahead, asked, 'known', noon + 20 * day);
    expect(healed.last).toBe(today);
    expect(healed.stability).toBeCloseTo(ahead.stability, 5);
    expect(isDue(healed, asked.advice, today)).toBe(false);
  });

  test('back at the beginning of time: nothing is lost, and later no century has passed', () => {
    const back = answered(learnt, asked, 'known', 5 * day);
    expect(back.answers).toBe(3);
    const later = answered(back, asked, 'known', noon + 30 * day);
    expect(later.due - later.last).toBeLessThanOrEqual(365);
    const year = answered(
      { ...back, last: dayOf(noon) - 365 + 30 },
      asked,
      'known',
      noon + 30 * day,
    );
    expect(later.stability).toBeCloseTo(year.stability, 5);
  });

  test('a traveller who is a day ahead is not asked twice', () => {
    const tomorrow = answered(learnt, asked, 'known', noon + 40 * day);
    const today = dayOf(noon + 39 * day);
    expect(isDue(tomorrow, asked.advice, today)).toBe(false);
    expect(answered(tomorrow, asked, 'known', noon + 39 * day)).toBe(tomorrow);
  });
});

test('the later of two records stays; one from the future is not believed', () => {
  const [early, late] = over(['known', 'known']);
  if (!early || !late) throw new Error('two answers');
  const now = late.at;
  expect(laterOf(early, late, now)).toBe(late);
  expect(laterOf(late, early, now)).toBe(late);
  const future = { ...early, at: now + 1000 * day };
  expect(laterOf(future, late, now)).toBe(late);
});
