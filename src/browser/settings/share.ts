import { readPositionAddress } from '../../contract/position-address.ts';
import type { SettingsWords } from '../../contract/words.ts';
import { element, make, makeButton } from '../element.ts';
import { chapterText } from '../hosts.ts';
import { readSpots, type Spot } from '../spots.ts';
import { loadStyle, makeDialog, showOver } from './form.ts';
import { gameTo } from './game-to.ts';

/** Offers the position on the following board as a FEN, an address, moves, or to another program. */
export async function openShare(): Promise<void> {
  const words = globalThis.readerWords;
  const caption = document.querySelector<HTMLAnchorElement>('.beside .board-caption');
  const article = chapterText();
  if (words === undefined || caption === null || article === null) return;
  await loadStyle();
  const id = decodeURIComponent(caption.hash.slice(1));
  const shown = document.getElementById(id);
  const spots = readSpots(article);
  const spot = (shown && spots.get(shown)) ?? [...spots.values()][0];
  if (spot !== undefined) showOver(shareDialog(spot, words));
}

function shareDialog(spot: Spot, words: SettingsWords): HTMLDialogElement {
  const { share } = words;
  const fen = fenOf(spot);
  const address = new URL(`#${spot.element.id}`, location.href).href;
  const shown = element('input', {
    class: 'shared',
    readonly: '',
    'aria-label': 'FEN',
    value: fen,
  });
  const said = element('p', { role: 'status', class: 'settings-lead' });
  const copy = (name: string, text: string) =>
    makeButton(name, async () => {
      shown.value = text.replaceAll(/\s+/g, ' ').trim();
      try {
        await navigator.clipboard.writeText(text);
        said.textContent = share.copied;
      } catch {
        // Refused, or an address that is not safe (http:, file: in some browsers).
        shown.select();
        said.textContent = document.execCommand('copy') ? share.copied : share.notCopied;
      }
    });
  const acts = [
    copy(share.fen, fen),
    copy(share.address, address),
    copy(share.moves, gameTo(spot, fenOf, words.letters)),
  ];
  if (typeof navigator.share === 'function') {
    acts.push(
      makeButton(share.share, () => {
        // Refused where the reader thinks better of it.
        navigator.share({ title: document.title, url: address }).catch(() => {});
      }),
    );
  }
  return makeDialog('share-position', share, shown, make('p', 'share-acts', ...acts), said);
}

/** The number of the move is the page's; how many half-moves ago a pawn moved it does not say: 0. */
function fenOf({ element, move, children }: Spot): string {
  const key = readPositionAddress(element.dataset.p ?? element.id)?.key ?? '';
  const number =
    move === undefined
      ? (children[0]?.move?.number ?? 1)
      : move.number + (move.color === 'black' ? 1 : 0);
  return `${key} 0 ${number}`;
}
