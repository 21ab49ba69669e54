import { dataOf } from '../../contract/attributes.ts';
import {
  type ExerciseGrade,
  type ExerciseResults,
  exerciseResultsKey,
  exerciseRoundKey,
  joinExerciseResults,
  readExerciseResults,
} from '../../contract/exercise-results.ts';
import { parseJson } from '../../contract/parse-json.ts';
import { courseElement } from '../hosts.ts';
import { keptText } from '../kept-text.ts';

export function courseOfPage(): string {
  return dataOf('course', courseElement()).course ?? '';
}

/** A reader's results; none where the browser keeps nothing. */
export function resultsOf(course: string): ExerciseResults {
  return readExerciseResults(parseJson(keptText(exerciseResultsKey(course))));
}

/**
 * Adds results to those that are kept, which may come from another tab meanwhile.
 * @returns how many of them are new or better; none where the browser keeps nothing.
 */
export function keepResults(course: string, results: ExerciseResults): number {
  const known = resultsOf(course);
  const joined = joinExerciseResults(known, results);
  try {
    localStorage.setItem(exerciseResultsKey(course), JSON.stringify(joined));
  } catch {
    return 0;
  }
  return Object.keys(results).filter((key) => joined[key]?.grade !== known[key]?.grade).length;
}

/** Forgets them; they are gone with the rest of what a reader has learnt. */
export function forgetResults(course: string): void {
  try {
    localStorage.removeItem(exerciseResultsKey(course));
  } catch {
    // Nothing was kept either.
  }
}

/** @param key `Position.key` of the exercise. */
export function keepResult(course: string, key: string, grade: ExerciseGrade, now: Date): void {
  keepResults(course, { [key]: { grade, day: dayOf(now) } });
}

function dayOf(date: Date): string {
  const [month, day] = [date.getMonth() + 1, date.getDate()];
  return [date.getFullYear(), month, day].map((part) => String(part).padStart(2, '0')).join('-');
}

/** Leaves the addresses of the exercises that are to be gone through, for this visit. */
export function keepRound(course: string, addresses: readonly string[]): void {
  try {
    sessionStorage.setItem(exerciseRoundKey(course), JSON.stringify(addresses));
  } catch {
    // Each exercise still leads to the page of all.
  }
}

/** The exercise that comes after this one, if the reader goes through several. @param id of its section */
export function nextInRound(course: string, page: string, id: string): string | undefined {
  const round = parseJson(keptText(exerciseRoundKey(course), () => sessionStorage));
  if (!Array.isArray(round)) return undefined;
  const here = round.indexOf(`${page}#${id}`);
  const next: unknown = here < 0 ? undefined : round[here + 1];
  // Addresses within the site, and nothing else, whatever has been written there.
  return typeof next === 'string' && /^[\w.%-]+\.html#[^\s]*$/.test(next) ? next : undefined;
}
