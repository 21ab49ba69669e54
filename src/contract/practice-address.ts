import { readPositionAddress } from './position-address.ts';

/**
 * How other pages lead to a session of practice. The page is `practice.html`; what is practised stands behind `#`:
 *
 * - `practice.html#chapter=ID` — what a chapter teaches; `ID` is the chapter's id, the name of its page without `.html`.
 * - `practice.html#from=ADDRESS` — what the course asks in a position and behind it; `ADDRESS` as `positionAddress`
 *   makes it, with or without the name of a line behind it. Both may stand together, joined by `&`: the line of that
 *   chapter.
 * - `practice.html#missed` — exactly the positions that `sessionStorage` has under `missedKey`.
 */
export const practicePage = 'practice.html';

/** What a session is about; nothing in it for the whole course. */
export interface PracticeAim {
  readonly chapter?: string | undefined;
  /** `Position.key` */
  readonly from?: string | undefined;
  readonly missed?: boolean | undefined;
}

/** The address of a session about a chapter, as seen from another page of the site. */
export function chapterSession(id: string): string {
  return `${practicePage}#chapter=${encodeURIComponent(id)}`;
}

/** The address of a session about a position and what is behind it; `address` as `positionAddress` makes it. */
export function lineSession(address: string): string {
  return `${practicePage}#from=${encodeURIComponent(address)}`;
}

/** The address of a session about what is kept under `missedKey`. */
export const missedSession = `${practicePage}#missed`;

/** Reads what stands behind `#`; whatever is no aim is left out. */
export function readPracticeAim(hash: string): PracticeAim {
  const text = hash.replace(/^#/, '');
  if (text === 'missed') return { missed: true };
  const parts = new URLSearchParams(text);
  const from = parts.get('from');
  return {
    chapter: parts.get('chapter') ?? undefined,
    from: from === null ? undefined : readPositionAddress(from)?.key,
  };
}

/**
 * Where a page leaves, in `sessionStorage`, the positions that a reader wants to practise: for `#missed`. `course` is
 * `CourseTable.course`. The value is what `writeMissed` makes.
 */
export function missedKey(course: string): string {
  return `practice:${course}:missed`;
}

/** Positions by `Position.key`, in the order in which they are to be asked, as the text that is left. */
export function writeMissed(keys: Iterable<string>): string {
  return JSON.stringify([...new Set(keys)]);
}

/** Reads that text again; nothing where it is none. */
export function readMissed(text: string | null): readonly string[] {
  let data: unknown;
  try {
    data = JSON.parse(text ?? '');
  } catch {
    return [];
  }
  return Array.isArray(data) ? data.filter((key) => typeof key === 'string') : [];
}
