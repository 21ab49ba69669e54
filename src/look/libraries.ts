import { createRequire } from 'node:module';

/** Loaded where a course has a theme: a check without one need not wait for them. */
const require = createRequire(import.meta.url);

export const cssTree = (): typeof import('css-tree') => require('css-tree');
export const culori = (): typeof import('culori') => require('culori');
