export { buildCourse } from './build-course.ts';
export { matchPattern } from './match-pattern.ts';
export type * from './types.ts';
export { arrowMeanings, statementNames } from './types.ts';
export { walkText } from './walk-text.ts';
