/** One position as a picture file. */
export { positionAfter, positionOfFen, positionOfLabel } from './find-position.ts';
export { type DiagramRequest, makeDiagram, rasterize } from './make-diagram.ts';
