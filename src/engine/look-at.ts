import type { EngineFact } from '../facts/index.ts';
import { factOfSearch } from './fact-of-search.ts';
import type { PositionToLookAt } from './positions-to-look-at.ts';
import type { Engine } from './uci/engine.ts';
import { EngineError } from './uci/engine-error.ts';

export interface LookOptions {
  readonly jobs: number;
  /** An engine that has just been started; the others are started when they are needed. */
  readonly first: Engine;
  /** @throws EngineError */
  readonly start: () => Promise<Engine>;
  /** What the results are kept by. */
  readonly settings: string;
  /** Stops at once; what was found is found. */
  readonly signal: AbortSignal;
  readonly onFact: (fact: EngineFact) => void;
  /** A position at which the engine failed twice. @param reason a clause of what it did. */
  readonly onLeft: (position: PositionToLookAt, reason: string) => void;
}

/** After so many positions in a row an engine that fails at each is given up. */
const mostInARow = 5;

/**
 * Has engines look at positions, in order. One that dies, hangs or talks nonsense is started again, and the position
 * tried once more.
 * @returns how many positions nobody looked at any more, since the engine was given up.
 */
export async function lookAt(
  positions: readonly PositionToLookAt[],
  options: LookOptions,
): Promise<number> {
  const { jobs, signal } = options;
  const queue = positions.values();
  const spare = [options.first];
  const live = new Set<Engine>(spare);
  const stop = () => {
    for (const engine of live) engine.kill();
  };
  signal.addEventListener('abort', stop, { once: true });
  let failedInARow = 0;
  let taken = 0;
  const isOver = () => signal.aborted || failedInARow >= mostInARow;

  const start = async () => {
    const engine = spare.pop() ?? (await options.start());
    if (signal.aborted) engine.kill();
    live.add(engine);
    return engine;
  };
  const work = async () => {
    let engine: Engine | undefined;
    const attempt = async ({ position }: PositionToLookAt) => {
      try {
        engine ??= await start();
        const found = await engine.search(`${position.key} 0 1`);
        const { settings } = options;
        return factOfSearch(position, found, { engine: engine.name, settings });
      } catch (error) {
        engine?.kill();
        if (engine) live.delete(engine);
        engine = undefined;
        if (!(error instanceof EngineError)) throw error;
        return error;
      }
    };
    for (const position of queue) {
      if (isOver()) return;
      taken++;
      let found = await attempt(position);
      if (found instanceof EngineError && !signal.aborted) found = await attempt(position);
      if (signal.aborted) return;
      if (found instanceof EngineError) {
        failedInARow++;
        options.onLeft(position, found.message);
      } else {
        failedInARow = 0;
        options.onFact(found);
      }
      if (isOver()) return;
    }
  };
  try {
    await Promise.all(Array.from({ length: Math.max(1, jobs) }, work));
  } finally {
    signal.removeEventListener('abort', stop);
    stop();
  }
  return positions.length - taken;
}
