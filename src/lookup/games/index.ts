/** Games against a course. A door of its own: what only looks positions up needs no rules of chess. */
export {
  byPosition,
  countPositions,
  type PlayedInstead,
  type PositionCount,
  type PositionRow,
  type Score,
} from './by-position.ts';
export { type Comparison, compareGames } from './compare-games.ts';
export { linesOf } from './lines-of.ts';
export { type Leaving, type Parting, partingOf } from './parting-of.ts';
export type { ComparedGame, GameExit, GameFault, GameHead, GameMove } from './types.ts';
export { sideOfPlayer, withPlayer } from './with-player.ts';
