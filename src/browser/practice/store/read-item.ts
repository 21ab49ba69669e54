import * as z from 'zod/mini';
import { dayOf, msOfDay } from '../session/day.ts';
import { keptHistory, longest } from '../session/schedule.ts';
import { hows, type Item } from './item.ts';

/** JSON writes what is no number as null, and reads what is too large for one as Infinity. */
const number = z.custom<number | null>((value) => value === null || typeof value === 'number');
const schema = z.object({
  key: z.string().check(z.regex(/^[1-8KQRBNPkqrbnp/]+ [wb] \S+ \S+$/)),
  advice: z.string().check(z.minLength(2), z.maxLength(10)),
  last: number,
  due: number,
  stability: number,
  difficulty: number,
  answers: number,
  misses: number,
  at: number,
  history: z.array(z.tuple([number, z.enum(hows)])),
});
type Raw = z.output<typeof schema>;

/** What FSRS calculates with: less it refuses, more it never gives. */
const stabilities = [0.001, 36_500] as const;
const difficulties = [1, 10] as const;

/** 31 December 9999: the last day that a date of four figures can tell. */
export const endOfDays = 2_932_896;

/** By when an item is judged: today, and the last day on which it can have been answered. */
export interface Clock {
  readonly today: number;
  readonly latest: number;
}

/**
 * An item that was kept or saved by whatever program, so that it can be asked and answered; nothing
 * if it is none. What no clock can have given is `mended`. A day that is merely in the future is
 * left alone: the clock that is wrong may be the one here.
 */
export function readItem(
  data: unknown,
  clock: Clock,
): { readonly item: Item; readonly mended: boolean } | undefined {
  const raw = schema.safeParse(data).data;
  if (raw === undefined) return undefined;
  const item = mend(raw, clock);
  return { item, mended: !isSame(raw, item) };
}

function mend(raw: Raw, { today, latest }: Clock): Item {
  const isDay = (day: number | null): day is number =>
    Number.isInteger(day) && day !== null && day >= 0 && day <= latest;
  const history = raw.history.flatMap(([day, how]) => (isDay(day) ? [[day, how] as const] : []));
  const days = isDay(raw.last)
    ? { last: raw.last, due: dueAfter(raw.last, raw.due) }
    : // Asked now. From yesterday on, since what is known twice a day counts once.
      { last: today - 1, due: today };
  const answers = isCount(raw.answers) ? raw.answers : Math.max(1, history.length);
  const at = raw.at !== null && raw.at >= 0 && isDay(dayOf(raw.at)) ? raw.at : noonOf(days.last);
  return {
    key: raw.key,
    advice: raw.advice,
    ...days,
    // FSRS gives an interval as many days as the memory lasts, so the one stands for the other.
    stability: within(stabilities, raw.stability, days.due - days.last),
    difficulty: within(difficulties, raw.difficulty, 5),
    answers,
    misses: Math.min(answers, isCount(raw.misses) ? raw.misses : 0),
    at,
    history: history.slice(-keptHistory),
  };
}

/** Soon, where nothing follows from it. */
function dueAfter(last: number, due: number | null): number {
  return Number.isInteger(due) && due !== null
    ? Math.min(Math.max(due, last + 1), last + longest)
    : last + 1;
}

function within(
  [least, most]: readonly [number, number],
  value: number | null,
  otherwise: number,
): number {
  const known = value === null || Number.isNaN(value) ? otherwise : value;
  return Math.min(Math.max(known, least), most);
}

function isCount(value: number | null): value is number {
  return Number.isSafeInteger(value) && value !== null && value >= 0;
}

function noonOf(day: number): number {
  return Math.max(0, day * msOfDay + msOfDay / 2);
}

function isSame(raw: Raw, item: Item): boolean {
  const { history, ...rest } = item;
  return (
    history.length === raw.history.length &&
    Object.entries(rest).every(([name, value]) => raw[name as keyof Raw] === value)
  );
}
