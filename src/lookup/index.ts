export { givenNotes, noteName } from './course-notes.ts';
export { moveOf, positionOf } from './find.ts';
export { firstMoves } from './first-moves.ts';
export { givenTable } from './given-table.ts';
export { lineText, moveText } from './line-text.ts';
export { type PathMove, type Paths, pathsOf } from './paths.ts';
export { pageHref, placeHref, tablePlace } from './place-href.ts';
