import type { CourseNotes } from '../contract/course-notes.ts';

/** The name of the note on a move from the position with an index. */
export function noteName(position: number, san: string): string {
  return `${position} ${san}`;
}

declare global {
  /** Set by the site's script with the notes; absent on pages that do not load it. */
  var courseNotes: CourseNotes | undefined;
}

/** The notes that this page was given. @throws if it loads none. */
export function givenNotes(): CourseNotes {
  const notes = globalThis.courseNotes;
  if (notes === undefined) throw new Error('this page loads no notes of the course');
  return notes;
}
