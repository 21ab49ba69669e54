export { findGaps, type Gap } from './find-gaps.ts';
