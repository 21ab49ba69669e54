import type { CourseTable } from '../../contract/course-table.ts';
import { readPositionAddress } from '../../contract/position-address.ts';
import { drawBoardInPage } from '../../draw/page-board.ts';
import { element } from '../element.ts';

/** A board that only goes along with words which say the same: hidden from assistive technology. */
export function smallBoard({ side }: CourseTable, placement: string): HTMLElement {
  const board = element('span', { class: 'plate-board', 'aria-hidden': 'true' });
  const view = side === 'black' ? 'black' : 'white';
  board.innerHTML = drawBoardInPage({ placement, view, coordinates: false });
  return board;
}

/** What stands on the board at a place of a chapter; nothing where its id names no position. */
export function placementAt({ positions }: CourseTable, id: string): string | undefined {
  const addressed = readPositionAddress(id);
  if (addressed !== undefined) return addressed.placement;
  // A named position has its name as its address.
  return positions.find(({ names }) => names?.includes(id))?.key.split(' ', 1)[0];
}
