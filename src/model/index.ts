export { buildCourse } from './build-course.ts';
export { walkText } from './collect-labels.ts';
export { matchPattern } from './match-pattern.ts';
export type * from './types.ts';
export { arrowMeanings, statementNames } from './types.ts';
