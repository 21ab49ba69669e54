import * as z from 'zod/mini';
import { type ExerciseResults, readExerciseResults } from '../../../contract/exercise-results.ts';
import { parseJson } from '../../../contract/parse-json.ts';
import { type OwnEntry, readOwnEntry } from '../../free/own-entry.ts';
import { dayOf } from '../session/day.ts';
import type { Item } from './item.ts';
import { endOfDays, readItem } from './read-item.ts';

/** What a file of progress says of itself. */
const format = 'linewright practice progress';
const version = 1;

const schema = z.object({
  format: z.literal(format),
  version: z.int(),
  course: z.string(),
  title: z.string(),
  saved: z.optional(z.unknown()),
  count: z.int().check(z.minimum(0)),
  items: z.optional(z.unknown()),
  /** What the reader has kept at positions; files before had none. */
  notes: z.optional(z.unknown()),
  /** Results of exercises; files before had none. */
  exercises: z.optional(z.unknown()),
});

export interface ProgressCourse {
  readonly course: string;
  readonly title: string;
  readonly edition: string;
}

/** Progress, results of exercises, and what the reader has kept at positions, as the text of a file. `now` in ms since 1970. */
export function makeProgressFile(
  { course, title, edition }: ProgressCourse,
  items: Iterable<Item>,
  now: number,
  notes: Iterable<OwnEntry> = [],
  exercises: ExerciseResults = {},
): string {
  const all = [...items];
  const kept = [...notes];
  const saved = new Date(now).toISOString();
  const head = { format, version, course, title, edition, saved, count: all.length };
  const beside = {
    ...(kept.length > 0 && { notes: kept }),
    ...(Object.keys(exercises).length > 0 && { exercises }),
  };
  return `${JSON.stringify({ ...head, items: all, ...beside }, null, 1)}\n`;
}

/** What a file held, or why it is not taken. */
export type ProgressRead =
  | {
      /** The course that it was saved in: its id and its title then. */
      readonly course: string;
      readonly title: string;
      readonly items: readonly Item[];
      /** Those that are sound. */
      readonly notes: readonly OwnEntry[];
      readonly exercises: ExerciseResults;
      /** Keys of those that had a date, or another number, that cannot be. */
      readonly mended: ReadonlySet<string>;
    }
  | { readonly fault: 'not-progress' | 'cut-short' | 'newer' };

/** Reads the text of a file. Nothing of a faulty file is taken. `now` in ms since 1970. */
export function readProgressFile(text: string, now: number): ProgressRead {
  const data = parseJson(text.replace(/^\uFEFF/, ''));
  if (data === undefined) {
    return { fault: text.includes(`"format": "${format}"`) ? 'cut-short' : 'not-progress' };
  }
  const file = schema.safeParse(data).data;
  if (file === undefined) return { fault: 'not-progress' };
  if (file.version > version) return { fault: 'newer' };
  if (!Array.isArray(file.items)) return { fault: 'not-progress' };
  const clock = { today: dayOf(now), latest: latestDay(file.saved, now) };
  const read = file.items.map((item) => readItem(item, clock));
  const sound = read.filter((item) => item !== undefined);
  if (sound.length < read.length) return { fault: 'not-progress' };
  if (sound.length !== file.count) return { fault: 'cut-short' };
  return {
    course: file.course,
    title: file.title,
    items: sound.map(({ item }) => item),
    notes: Array.isArray(file.notes) ? file.notes.flatMap((note) => readOwnEntry(note) ?? []) : [],
    exercises: readExerciseResults(file.exercises),
    mended: new Set(sound.filter(({ mended }) => mended).map(({ item }) => item.key)),
  };
}

/**
 * The last day that a file can speak of: that on which it was saved, by whichever clock, and one
 * more for travellers.
 */
function latestDay(saved: unknown, now: number): number {
  const day = typeof saved === 'string' ? dayOf(Date.parse(saved)) : Number.NaN;
  return Math.max(dayOf(now), day <= endOfDays ? day : 0) + 1;
}
