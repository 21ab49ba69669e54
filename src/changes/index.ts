/** What changed between two editions of a course, on the board, and the news of it. */
export { compareCourses } from './compare-courses.ts';
export { findJudgementsToAsk, type JudgementToAsk } from './find-judgements-to-ask.ts';
export { makeNews } from './make-news.ts';
export type * from './types.ts';
export { writeChanges } from './write-changes.ts';
