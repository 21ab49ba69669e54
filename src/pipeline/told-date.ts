import { UserError } from '../diagnostics/index.ts';

/**
 * The date in SOURCE_DATE_EPOCH, seconds since 1970, if it is set (reproducible-builds.org).
 * @throws UserError for a malformed value, as its specification asks.
 */
export function toldDate(): Date | undefined {
  const told = process.env.SOURCE_DATE_EPOCH ?? '';
  if (told === '') return undefined;
  if (/^\d{1,11}$/.test(told)) return new Date(Number(told) * 1000);
  throw new UserError(
    `SOURCE_DATE_EPOCH is \`${told}\`, which is no date`,
    'set it to the seconds since 1970, such as 1772366400, or not at all',
  );
}

/** The start of a day written as `2026-11-25`. */
export function dayOf(date: string): Date {
  return new Date(`${date}T00:00:00Z`);
}

/** Today in the author's time zone, as `2026-11-25`. */
export function today(): string {
  const now = new Date();
  const two = (number: number) => String(number).padStart(2, '0');
  return `${now.getFullYear()}-${two(now.getMonth() + 1)}-${two(now.getDate())}`;
}
