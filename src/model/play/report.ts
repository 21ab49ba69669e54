import type { Place } from '../../diagnostics/index.ts';
import type { ChapterInWork } from './work.ts';

/** Adds a problem of a chapter: its place, what is wrong, and what to do. */
export function reportIn({ problems }: ChapterInWork) {
  return (place: Place, message: string, hint: string): void => {
    problems.push({ rule: 'chapter-unreadable', place, message, hint });
  };
}
