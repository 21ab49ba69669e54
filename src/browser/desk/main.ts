/** Only in `linewright dev`, never in a published site: follows the author's files, and shows what is to be mended. */
import { type DeskState, deskRoot } from '../../contract/desk.ts';
import { ownData } from './own-data.ts';

const shown = Number(ownData.version);
const events = new EventSource(`${deskRoot}events`);

events.addEventListener('message', ({ data }: MessageEvent<string>) => {
  const state = JSON.parse(data) as DeskState;
  // Compared with what the page was made of: it may have changed before the page heard of it.
  if (state.version !== shown) location.reload();
});
