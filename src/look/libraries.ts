import { createRequire } from 'node:module';

/** Loaded only for a course with a theme. */
const require = createRequire(import.meta.url);

export const cssTree = (): typeof import('css-tree') => require('css-tree');
export const culori = (): typeof import('culori') => require('culori');
