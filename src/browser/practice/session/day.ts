export const msOfDay = 86_400_000;

/** A day begins at four: after midnight is still the evening before. */
const firstHour = 4;

/** The reader's day as a number, days since 1970 by the local calendar. `now` in ms since 1970. */
export function dayOf(now: number): number {
  const date = new Date(now);
  const day = Date.UTC(date.getFullYear(), date.getMonth(), date.getDate()) / msOfDay;
  return date.getHours() < firstHour ? day - 1 : day;
}

/** The instant that stands for a day where a `Date` is asked for. */
export function dateOfDay(day: number): Date {
  return new Date(day * msOfDay);
}

export function dayOfDate(date: Date): number {
  return Math.round(date.getTime() / msOfDay);
}
