/** Finds what an address names that nothing on the page has as its id, or tells that it is gone. */
import { caption } from '../words.ts';
import { findAddress } from './find-address.ts';
import { answerOnce } from './lost-address.ts';
import { placesOf } from './places.ts';
import { tellGone } from './tell-gone.ts';

answerOnce(({ id, article, spots, words, show }) => {
  const found = findAddress(id, placesOf(article, spots), words.letters);
  if (found !== undefined && !found.isGone) {
    show(found.place.spot);
    return;
  }
  const still = stillBoard(id);
  if (still !== null) {
    still.scrollIntoView();
    return;
  }
  const spot = found?.place.spot;
  tellGone(id, spot && caption(spot, words), words.gone);
  if (spot !== undefined) show(spot);
});

/** A diagram or an exercise that shows a position which no move on the page leads to. */
function stillBoard(id: string): HTMLElement | null {
  const of = (kind: string) => document.getElementById(id.replace(/^at/, kind));
  return of('diagram') ?? of('exercise');
}
