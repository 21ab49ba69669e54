import { type Spot, startOfBlock } from '../spots.ts';
import type { AddressedPlace } from './find-address.ts';

const blocks = ['.moves', '.diagram', '.exercise', '.game', '.pattern'];

/** What the page's spots have to do with addresses, in the order of the text. */
export function placesOf(
  article: HTMLElement,
  spots: ReadonlyMap<Element, Spot>,
): (AddressedPlace & { readonly spot: Spot })[] {
  const inText = [...article.querySelectorAll(blocks.join())].filter(
    (block) => block.parentElement?.closest('.exercise, .game, .answers') === null,
  );
  return [...spots.values()].map((spot) => {
    const { element } = startOfBlock(spot);
    const { address, placement, move } = spot;
    const block = inText.findIndex((each) => each.contains(element)) + 1;
    return { spot, address, placement, move, block, isMain: isMain(spot) };
  });
}

function isMain(spot: Spot): boolean {
  for (let here = spot; here.parent !== undefined; here = here.parent) {
    if (here.parent.children[0] !== here) return false;
  }
  return true;
}
