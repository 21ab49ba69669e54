/** Tries the cases that it is sent: in a thread of its own, so that one that hangs can be ended. */
import { parentPort } from 'node:worker_threads';
import type { FuzzCase } from './case.ts';
import { runCase } from './run-case.ts';

parentPort?.on('message', async (tried: FuzzCase) => {
  parentPort?.postMessage(await runCase(tried));
});
