/** A course as PGN, for other programs. */
export { makePgnWithDirectives } from './directives/make-pgn.ts';
export { makePgn, pgnPart } from './make-pgn.ts';
export { toLatin1 } from './to-latin1.ts';
