/**
 * The language in which dates are written: English without a country has the day before the month,
 * as the rest of the world has.
 */
export function dateLanguage(language: string): string {
  return language === 'en' ? 'en-GB' : language;
}

/** `25 November 2026` for `2026-11-25`; nothing for a day that could not be read, which a preview shows all the same. */
export function dayInWords(date: string, language: string): string {
  if (date === '') return '';
  const format = new Intl.DateTimeFormat(dateLanguage(language), {
    dateStyle: 'long',
    timeZone: 'UTC',
  });
  return format.format(new Date(`${date}T00:00:00Z`));
}
