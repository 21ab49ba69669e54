export { findFiles, NoCourseError } from './find-files.ts';
export { isLabel, parseArrow, parseList } from './names.ts';
export type * from './nodes.ts';
export { directiveNames } from './nodes.ts';
export { blockNames } from './read-block.ts';
export { readChapter, reservedIds } from './read-chapter.ts';
export { readCourse } from './read-course.ts';
export { remarkCourse } from './remark-course.ts';
export type * from './types.ts';
