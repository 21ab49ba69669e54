/** Makes the board of a chapter free to play on; loaded at the reader's first act there (`offer.ts`). */
import { freePlayReady } from '../../contract/free-play.ts';
import { startFree } from './start.ts';

dispatchEvent(new CustomEvent(freePlayReady, { detail: startFree }));
