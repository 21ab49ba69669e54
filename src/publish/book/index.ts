/** The course as an e-book. A door of its own: what letters need takes longer to load than a book to make. */
export { type BookOptions, bookFindings, coursePart, makeBook } from './make-book.ts';
export { type PackedFiles, zipBook } from './zip-book.ts';
export type { PackedFile } from './zip-files.ts';
