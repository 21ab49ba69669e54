export type { Difference } from './find-position.ts';
export type { FollowedMoves } from './follow-moves.ts';
export { nearestPositions } from './nearest-positions.ts';
export { type PositionSearch, searchPositions } from './search-positions.ts';
