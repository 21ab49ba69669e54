/** A chess engine of the author's own, asked about the positions of a course. */
export { doubtfulKeys } from './doubtful-keys.ts';
export { lookAt } from './look-at.ts';
export { type PositionToLookAt, positionsToLookAt } from './positions-to-look-at.ts';
export { type Engine, type EngineOptions, type SearchLimit, startEngine } from './uci/engine.ts';
export { EngineError } from './uci/engine-error.ts';
