/**
 * What practice leaves, in `localStorage` under `forecastKey`, for pages that know nothing of the course's moves: how
 * many of them fall due on which day. `course` is `CourseTable.course`.
 */
export function forecastKey(course: string): string {
  return `practice:${course}:forecast`;
}

/** The text that is left, of the days on which moves are due; days as `browser/practice/day.ts` counts them. */
export function writeForecast(days: Iterable<number>): string {
  const counts = new Map<number, number>();
  for (const day of days) counts.set(day, (counts.get(day) ?? 0) + 1);
  return JSON.stringify([...counts].sort(([a], [b]) => a - b));
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
  try {
    const entries: unknown = JSON.parse(text ?? '');
    return Array.isArray(entries) ? entries : [];
  } catch {
    return [];
  }
}
