/** Tries the cases that it is sent: in a thread of its own, so that one that hangs can be ended. */
import { parentPort } from 'node:worker_threads';
import type { FuzzCase, Outcome } from './case.ts';
import { settle } from './make/settle.ts';
import { runCase } from './run-case.ts';

parentPort?.on('message', async (given: FuzzCase) => {
  const tried = given.settle ? { target: given.target, files: settle(given.files) } : given;
  const outcome: Outcome = { tried, failures: await runCase(tried) };
  parentPort?.postMessage(outcome);
});
