import { readPositionAddress } from '../../contract/position-address.ts';
import type { FreeWords } from '../../contract/words.ts';
import { element } from '../element.ts';
import type { Spot } from '../spots.ts';
import type { OwnEntry } from './own-entry.ts';

/** Signs every move of the text at whose position the reader has a note or a bookmark. */
export function signText(
  spots: ReadonlyMap<Element, Spot>,
  entries: ReadonlyMap<string, OwnEntry>,
  words: FreeWords,
): void {
  const signed = new Set(document.querySelectorAll('.own-signed'));
  if (entries.size === 0 && signed.size === 0) return;
  for (const [place, spot] of spots) {
    if (spot.move === undefined) continue;
    const key = readPositionAddress(spot.address)?.key;
    const entry = key === undefined ? undefined : entries.get(key);
    const kind =
      entry?.bookmark === true ? 'bookmark' : entry?.text !== undefined ? 'note' : undefined;
    if (kind === undefined && !signed.has(place)) continue;
    place.classList.toggle('own-signed', kind !== undefined);
    place.classList.toggle('own-marked', kind === 'bookmark');
    if (kind === undefined) place.removeAttribute('aria-describedby');
    else place.setAttribute('aria-describedby', description(kind, words));
  }
}

/** The id of the words that describe a signed move. */
function description(kind: 'note' | 'bookmark', words: FreeWords): string {
  const id = `own-sign-${kind}`;
  if (document.getElementById(id) === null) {
    document.body.append(element('span', { id, hidden: '' }, words.signs[kind]));
  }
  return id;
}
