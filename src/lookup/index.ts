export * from './course-notes.ts';
export { moveOf, positionOf } from './find.ts';
export { givenTable } from './given-table.ts';
export type * from './types.ts';
