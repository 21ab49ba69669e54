/** What leaves the site: a checked course, or a part of one, becomes files to send and to keep. */
export type { LetterChoice } from './letter/choose-text.ts';
export { type Letter, type LetterOptions, makeLetter } from './letter/make-letter.ts';
export { PublishError } from './publish-error.ts';
