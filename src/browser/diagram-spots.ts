import { dataOf } from '../contract/attributes.ts';
import { readPositionAddress } from '../contract/position-address.ts';
import { drawnOf, noPieces, type Spot } from './spots.ts';

/**
 * The diagrams of the text as positions that the page's board shows, with the diagram's own marks and arrows. One
 * whose position a move of the text leads to goes on as that move does.
 */
export function addDiagrams(root: ParentNode, spots: Map<Element, Spot>): void {
  for (const element of root.querySelectorAll<HTMLElement>('.diagram[data-p]')) {
    const { p = '', view, last = '', at = '' } = dataOf('diagram', element);
    const move = document.getElementById(at);
    const home = move === null ? undefined : spots.get(move);
    const position = readPositionAddress(p);
    spots.set(element, {
      element,
      home,
      parent: home?.parent,
      children: home?.children ?? [],
      placement: position?.placement ?? noPieces,
      address: position?.plain ?? '',
      view: view === 'black' ? 'black' : 'white',
      ...drawnOf(element),
      also: home?.also ?? [],
      move: undefined,
      lastMove: last === '' ? undefined : { from: last.slice(0, 2), to: last.slice(2, 4) },
    });
  }
}
