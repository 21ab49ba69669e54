import type { FreePlay } from '../../contract/free-play.ts';
import { FreeBoard } from './free-board.ts';
import type { StartFree } from './offer.ts';
import { browserKeeper, openOwnStore } from './own-store.ts';

declare global {
  /** Set by the site's script that loads this one. */
  var freePlay: FreePlay | undefined;
}

/** Makes a chapter's board free to play on, and does what the reader has done before. */
export const startFree: StartFree = (text, early) => {
  const given = globalThis.freePlay;
  if (given === undefined) throw new Error('this page loads no words for playing freely');
  const free = new FreeBoard(text, given, openOwnStore(given.course, browserKeeper()));
  if (early.tools) free.openTools();
  for (const gesture of early.gestures) free.perform(gesture);
  return (gesture) => free.perform(gesture);
};
