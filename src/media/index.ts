/** What a file of `media/` must be to be published. */
export { findMediaFault } from './media-fault.ts';
export { mediaKinds } from './media-kinds.ts';
export { findNameFault } from './name-fault.ts';
export { readPictureShape } from './read-picture-shape.ts';
export type * from './types.ts';
