import { parseJson } from './parse-json.ts';

/**
 * What practice leaves, in `localStorage` under `forecastKey`, for pages that know nothing of the course's moves: how
 * many of them fall due on which day. `course` is `CourseTable.course`.
 */
export function forecastKey(course: string): string {
  return `practice:${course}:forecast`;
}

/** The text that is left, of the days on which moves are due; days as `browser/practice/session/day.ts` counts them. */
export function writeForecast(days: Iterable<number>): string {
  const counts = new Map<number, number>();
  for (const day of days) counts.set(day, (counts.get(day) ?? 0) + 1);
  return JSON.stringify([...counts].sort(([a], [b]) => a - b));
}

/** What is left of each chapter, in `localStorage`, for the first page. */
export function chapterProgressKey(course: string): string {
  return `practice:${course}:chapters`;
}

/** What is left of the whole course, in `localStorage`, for the first page of its shelf. */
export function courseProgressKey(course: string): string {
  return `practice:${course}:whole`;
}

/** How many moves are known, of how many that are asked; none for whatever is no such text. */
export function readTally(text: string | null): { readonly known: number; readonly all: number } {
  const { known, all } = (parseJson(text) ?? {}) as Record<string, unknown>;
  const isSound = typeof known === 'number' && typeof all === 'number';
  return isSound ? { known, all } : { known: 0, all: 0 };
}

export interface ChapterProgress {
  /** How many of its moves are known, of how many that are asked. */
  readonly known: number;
  readonly all: number;
  /** When its moves are due, as `writeForecast` writes it. */
  readonly due: string;
}

/** By the ids of chapters; whatever is no such thing is left out. */
export function readChapterProgress(text: string | null): ReadonlyMap<string, ChapterProgress> {
  const parsed = parseJson(text);
  const entries = typeof parsed === 'object' && parsed !== null ? Object.entries(parsed) : [];
  return new Map(
    entries.flatMap(([id, entry]) => {
      const { known, all, due } = (entry ?? {}) as Record<string, unknown>;
      const isSound =
        typeof known === 'number' && typeof all === 'number' && typeof due === 'string';
      return isSound ? [[id, { known, all, due }] as const] : [];
    }),
  );
}

/** How many moves are due by a day; 0 for whatever is no such text. */
export function dueIn(text: string | null, today: number): number {
  let due = 0;
  for (const entry of entriesOf(text)) {
    const [day, count] = Array.isArray(entry) ? (entry as readonly unknown[]) : [];
    if (typeof day === 'number' && typeof count === 'number' && day <= today) due += count;
  }
  return due;
}

function entriesOf(text: string | null): readonly unknown[] {
  const entries = parseJson(text);
  return Array.isArray(entries) ? entries : [];
}
