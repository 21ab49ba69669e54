/** What is known of positions beside the rules of chess: an engine's results, by the key of the position. */
export { type EngineFacts, makeEngineFacts, noFacts } from './engine-facts.ts';
export { factName, makeFactsFile, parseFactsFile } from './facts-file.ts';
export { beforeMove, inPawns, parseScore, writeScore } from './score.ts';
export { scoreOfMove } from './score-of-move.ts';
export type * from './types.ts';
