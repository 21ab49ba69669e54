/** The replies that a course lacks. */
export { findGaps, type Gap } from './find-gaps.ts';
