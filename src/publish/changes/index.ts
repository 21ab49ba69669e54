export { compareCourses } from './compare-courses.ts';
export type * from './types.ts';
export { writeChanges } from './write-changes.ts';
