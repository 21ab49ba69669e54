import type { FreeWords } from './words.ts';

/**
 * What a page is given when its reader first acts on its board, or keeps something of his own: nothing of it
 * is loaded before. Plain, serialisable data.
 */
export interface FreePlay {
  /** The course through all its editions: its notes are kept by it. */
  readonly course: string;
  readonly words: FreeWords;
  /** Path of what practice and free play know of a course beside its table; not every course advises moves. */
  readonly notes?: string;
}

/**
 * Script at the root of the site that brings the words, the script and the styles of playing freely. Its name
 * stays, so that a chapter's page does not change with them.
 */
export const freePlayLoader = 'free-play.js';

/** The event of the window that hands out, as its detail, what makes a board free to play on. */
export const freePlayReady = 'course-free-play';

/** The event that tells that a part of it could not be loaded. */
export const freePlayFailed = 'course-free-play-failed';

/** What everything that is kept for a reader of any course on this host begins with, in `localStorage`. */
export const ownPrefix = 'own:';
