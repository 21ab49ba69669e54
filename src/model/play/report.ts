import type { Place } from '../../diagnostics/index.ts';
import type { ChapterInWork } from './work.ts';

/** Returns a function that reports a problem of a chapter. */
export function reportIn({ problems }: ChapterInWork) {
  return (place: Place, message: string, hint: string): void => {
    problems.push({ rule: 'chapter-unreadable', place, message, hint });
  };
}
