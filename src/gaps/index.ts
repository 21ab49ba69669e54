/** The replies that a course lacks. */
export { type EngineVoice, findGaps, type Gap, type GapOptions } from './find-gaps.ts';
