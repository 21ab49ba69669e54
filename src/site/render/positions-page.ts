import type { PageData } from '../site-data.ts';
import { namedPositions } from './named-positions.ts';
import { makePlates } from './plates.ts';
import type { SiteContext } from './site-context.ts';
import { type Meeting, meetingPlates } from './transpositions.ts';

/**
 * Boards in the page, some 50 KB compressed; a script draws the others as they come into view.
 */
const drawnBoards = 300;

/** The page of positions: those with names, and those where orders of moves meet. */
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
