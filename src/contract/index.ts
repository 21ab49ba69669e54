/**
 * What the build writes into pages and the reader's browser reads there: addresses, words, attributes, the table of
 * positions. The browser loads the files that it uses.
 */
export {
  boardParts,
  type DataAttributes,
  dataAttributes,
  dataProperties,
  type LineKind,
} from './attributes.ts';
export type * from './course-exercises.ts';
export type * from './course-notes.ts';
export * from './course-table.ts';
export * from './desk.ts';
export type * from './desk-write.ts';
export * from './drawn-signs.ts';
export * from './exercise-results.ts';
export * from './forecast.ts';
export * from './free-play.ts';
export * from './kept-reading.ts';
export {
  positionAddress,
  readEarlierAddress,
  readPositionAddress,
  repeatedAddress,
  sanInEarlierAddress,
} from './position-address.ts';
export * from './practice-address.ts';
export * from './reader-keys.ts';
export * from './reader-settings.ts';
export * from './renewed-text.ts';
export { type Counted, counted, fill, joinSentences, withStop } from './sentence.ts';
export { shelfFolders } from './shelf-folders.ts';
export type * from './shelf-table.ts';
export { splitUnbroken } from './split-moves.ts';
export * from './theme-sheet.ts';
export { wordFolder, wordFolders } from './word-folders.ts';
export * from './words.ts';
