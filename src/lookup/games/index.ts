/** Games against a course. A door of its own: what only looks positions up needs no rules of chess. */
export { countPositions, type PositionRow } from './by-position.ts';
export { compareGames } from './compare-games.ts';
export { linesOf } from './lines-of.ts';
export { partingOf } from './parting-of.ts';
export type { ComparedGame, GameMove } from './types.ts';
export { sideOfPlayer, withPlayer } from './with-player.ts';
