import { parseJson } from './parse-json.ts';

/**
 * What a browser keeps of a reader's way through a course, in `localStorage` under `readingKey`: chapters write it,
 * the first page reads it. It is small, and nothing depends on it but what the first page offers.
 */
export interface KeptReading {
  /** The section in which the reader was last. */
  readonly last?: KeptPlace;
  /** Sections read to their end, by the ids of the chapters: ids of headings. */
  readonly read: Readonly<Record<string, readonly string[]>>;
}

export interface KeptPlace {
  /** Id of the chapter, the name of its page without `.html`. */
  readonly chapter: string;
  /** Id of the heading; empty before the first. */
  readonly at: string;
  /** What the heading says, or the chapter's title. */
  readonly title: string;
}

/** `course` is `CourseTable.course`. */
export function readingKey(course: string): string {
  return `reading:${course}`;
}

/** Reads what is kept; whatever it is not is left out. */
export function readKeptReading(text: string | null): KeptReading {
  const kept = recordOf(parseJson(text));
  const read = recordOf(kept.read);
  const sections = Object.entries(read).flatMap(([chapter, ids]) =>
    Array.isArray(ids) ? [[chapter, ids.filter((id) => typeof id === 'string')] as const] : [],
  );
  const { chapter, at, title } = recordOf(kept.last);
  const last =
    typeof chapter === 'string' && typeof at === 'string' && typeof title === 'string'
      ? { last: { chapter, at, title } }
      : {};
  return { ...last, read: Object.fromEntries(sections) };
}

function recordOf(value: unknown): Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null ? (value as Record<string, unknown>) : {};
}
