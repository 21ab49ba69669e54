import { fill } from '../../../contract/sentence.ts';
import type { PracticeWords } from '../../../contract/words.ts';
import { counted } from '../../counted.ts';
import { element, make } from '../../element.ts';
import { dateOfDay } from '../session/day.ts';
import type { Coming } from '../session/forecast.ts';
import { bar } from './svg.ts';

/** A row of a table: its name, the lengths of its bar, the longest first, and words that say the same. */
interface BarRow {
  readonly name: string;
  readonly parts: readonly (readonly [className: string, n: number])[];
  readonly text: string;
}

/** Rows with a name, a bar and words. */
export function barTable(title: string, rows: readonly BarRow[]): HTMLElement {
  const most = Math.max(...rows.map(({ parts: [longest] }) => longest?.[1] ?? 0));
  const lines = rows.map(({ name, parts, text }) => {
    const drawn = (parts[0]?.[1] ?? 0) > 0 ? [bar(most, parts)] : [];
    return make('tr', '', element('th', { scope: 'row' }, name), make('td', '', ...drawn, text));
  });
  const table = make('table', 'practice-bars', make('tbody', '', ...lines));
  return make('section', '', make('h2', '', title), table);
}

/** When moves come back; nothing where none does. */
export function forecastTable(
  coming: readonly Coming[],
  today: number,
  { practice }: PracticeWords,
): HTMLElement | undefined {
  if (coming.length === 0) return undefined;
  const rows = coming.map(({ from, to, count }) => ({
    name: nameOf(from - today, from, to, practice),
    parts: [['known', count]] as const,
    text: counted(practice.moves, count),
  }));
  return barTable(practice.forecast, rows);
}

function nameOf(
  ahead: number,
  day: number,
  to: number | undefined,
  practice: PracticeWords['practice'],
): string {
  if (ahead === 1) return practice.tomorrow;
  if (to === day) return dayName(day, { weekday: 'long' });
  if (to === undefined) return practice.later;
  return ahead === 7 ? practice.inSecondWeek : practice.inFourWeeks;
}

/** A day in the language of the page. */
export function dayName(day: number, form: Intl.DateTimeFormatOptions): string {
  const { lang } = document.documentElement;
  return new Intl.DateTimeFormat(lang, { ...form, timeZone: 'UTC' }).format(dateOfDay(day));
}

/** How many of so many answers were missed. */
export function missedText(sentence: string, misses: number, answers: number): string {
  const { format } = new Intl.NumberFormat(document.documentElement.lang);
  return fill(sentence, { n: format(misses), answers: format(answers) });
}
