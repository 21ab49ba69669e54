export { buildCourse } from './build-course.ts';
export { mainLine } from './main-line.ts';
export { matchPattern } from './match-pattern.ts';
export { placeOfNode } from './place-of-node.ts';
export { playedTrees } from './played-trees.ts';
export type * from './types.ts';
export { arrowMeanings, statementNames } from './types.ts';
export { walkText } from './walk-text.ts';
