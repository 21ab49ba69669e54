import type { PageData } from '../site-data.ts';
import { namedPositions } from './named-positions.ts';
import { makePlates } from './plates.ts';
import type { SiteContext } from './site-context.ts';
import { type Meeting, meetingPlates } from './transpositions.ts';

/**
 * So many boards stand in the page, some 50 KB compressed; the script of the page draws the others as they come
 * into view.
 */
const drawnBoards = 300;

/** What the page of positions shows: those that have names, and those in which orders of moves meet. */
export function positionsPage(
  base: SiteContext,
  meetings: readonly Meeting[],
): Pick<PageData['positions'], 'positions' | 'transpositions'> {
  const plates = makePlates(base, drawnBoards);
  return {
    positions: namedPositions(base, plates),
    transpositions: meetingPlates(base, meetings, plates),
  };
}
