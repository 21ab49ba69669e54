import { once } from 'node:events';
import { Worker } from 'node:worker_threads';
import type { FuzzCase, Outcome } from './case.ts';

/** Processor time that a case may take, in seconds: time of the clock says nothing on a busy machine. */
const longest = 15;

/** A case that takes more memory, in MB, ends its thread. */
const resourceLimits = { maxOldGenerationSizeMb: 1500 };

/** Where cases are tried, one after another. A case that hangs, or takes the thread down, has failed. */
export class Bench {
  #worker: Worker | undefined;
  readonly #script: URL;

  constructor(script = new URL('./run-worker.ts', import.meta.url)) {
    this.#script = script;
  }

  async try(tried: FuzzCase, limit = longest): Promise<Outcome> {
    const worker = this.#worker ?? new Worker(this.#script, { resourceLimits });
    this.#worker = worker;
    const ended = new AbortController();
    const before = await worker.cpuUsage().catch(() => undefined);
    worker.postMessage(tried);
    const outcome = Promise.race([
      once(worker, 'message', { signal: ended.signal }).then(([outcome]) => outcome as Outcome),
      once(worker, 'exit', { signal: ended.signal }).then(() =>
        this.#lost(tried, 'the thread has ended'),
      ),
      this.#watch(worker, before, limit, ended.signal).then((message) =>
        this.#lost(tried, message),
      ),
    ]);
    return outcome
      .catch((error: Error) => this.#lost(tried, `throws: ${error.message}\n${error.stack}`))
      .finally(() => ended.abort());
  }

  async close(): Promise<void> {
    await this.#worker?.terminate();
    this.#worker = undefined;
  }

  #lost(tried: FuzzCase, message: string): Outcome {
    void this.#worker?.terminate();
    this.#worker = undefined;
    return { tried, failures: [{ oracle: 'comes back', message }] };
  }

  #watch(
    worker: Worker,
    before: NodeJS.CpuUsage | undefined,
    limit: number,
    signal: AbortSignal,
  ): Promise<string> {
    return new Promise((resolve) => {
      const timer = setInterval(async () => {
        const used = await worker.cpuUsage(before).catch(() => undefined);
        if (used === undefined || used.user + used.system < limit * 1e6) return;
        resolve(`takes more than ${limit} seconds of the processor`);
      }, 250);
      signal.addEventListener('abort', () => clearInterval(timer));
    });
  }
}
