/**
 * Only in `linewright dev`, never in a published site: follows the author's files, and shows what is to be mended.
 *
 * What is the reader's stays while the text changes under it; `tests/browser/live.test.ts` holds each:
 * - the line that is being read, at its height in the window;
 * - the position on the board, and whether the board is turned or folded;
 * - a line of his own on the board;
 * - the focus, on a square of a board too;
 * - opened folds, and the answers of exercises;
 * - an exercise that is being solved, unless it is the one that changed;
 * - the list of findings, open or shut;
 * - what is selected, outside of what changed.
 */
import { type DeskState, deskFolder } from '../../contract/desk.ts';
import { textRenewed } from '../../contract/renewed-text.ts';
import { holdPlace } from './hold-place.ts';
import { openPlaces } from './open-place.ts';
import { siteRoot } from './own-data.ts';
import { servedPage } from './served-page.ts';
import { showFinding } from './show-finding.ts';
import { setShownVersion, shownVersion } from './shown-version.ts';
import { makeSlip } from './slip.ts';

const page = servedPage();
const slip = makeSlip();
openPlaces(slip.say);
showFinding();

let latest: DeskState | undefined;
let isRenewing = false;

const events = new EventSource(`${siteRoot}${deskFolder}events`);
events.addEventListener('message', ({ data }: MessageEvent<string>) => {
  latest = JSON.parse(data) as DeskState;
  if (isRenewing) return;
  isRenewing = true;
  void renew().finally(() => {
    isRenewing = false;
  });
});

/** Until the page shows the latest version that it has heard of. */
async function renew(): Promise<void> {
  while (latest !== undefined) {
    const state = latest;
    latest = undefined;
    // Compared with what the page was made of: it may have changed before the page heard of it.
    const gone = state.version === shownVersion() ? undefined : await follow(state);
    slip.show(state);
    if (gone !== undefined) slip.say(gone);
  }
}

/** @returns why the page cannot follow. */
async function follow({ version }: DeskState): Promise<string | undefined> {
  const response = await fetch(location.pathname + location.search, { cache: 'no-store' });
  const text = await response.text();
  if (response.status === 404) {
    return 'This page is no longer in the course: its file has another name now, or is gone.';
  }
  if (!response.ok) return text;
  const fresh = new DOMParser().parseFromString(text, 'text/html');
  const place = holdPlace();
  const added = page.become(fresh);
  if (added === undefined) {
    if (!holdsWork()) location.reload();
    return 'The course has changed. Load this page anew when you are done here.';
  }
  setShownVersion(version);
  dispatchEvent(new CustomEvent(textRenewed, { detail: added }));
  place.restore();
  return undefined;
}

/** Whether a reload would lose what its reader is in the middle of, as a session of practice. */
function holdsWork(): boolean {
  return /\/(?:practice|compare|search|tree|notes)\.html$/.test(location.pathname) && hasActed;
}

let hasActed = false;
for (const act of ['keydown', 'pointerdown'] as const) {
  addEventListener(act, () => {
    hasActed = true;
  });
}
