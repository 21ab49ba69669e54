/** What leaves the site: a checked course, or a part of one, becomes files to send and to keep. */
export { type BookOptions, makeBook } from './book/make-book.ts';
