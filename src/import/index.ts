/** A PGN file becomes the draft of a course. */

export * from './into/index.ts';
export { type Draft, type DraftOptions, makeDraft } from './make-draft.ts';
export { readArchive } from './read-archive.ts';
export { writeNotes } from './write-notes.ts';
