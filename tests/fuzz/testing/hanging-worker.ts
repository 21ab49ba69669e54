/** Stands for a program with a fault: hangs at one case, dies at another, and comes back from the rest. */
import { parentPort } from 'node:worker_threads';
import type { FuzzCase, Outcome } from '../case.ts';

parentPort?.on('message', (tried: FuzzCase) => {
  const { files } = tried;
  while ('hang' in files);
  if ('throw' in files) throw new RangeError('too deep');
  if ('exit' in files) process.exit(1);
  parentPort?.postMessage({ tried, failures: [] } satisfies Outcome);
});
