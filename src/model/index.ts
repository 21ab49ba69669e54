export { buildCourse } from './build-course.ts';
export { walkText } from './collect-labels.ts';
export type * from './types.ts';
export { arrowMeanings, statementNames } from './types.ts';
