/** The thread that `judgeInThread` starts. */
import { parentPort, workerData } from 'node:worker_threads';
import type { PlayedTree } from '../types.ts';
import { judgeTree } from './judge-tree.ts';

for (const tree of workerData as readonly PlayedTree[]) {
  const found = judgeTree(tree);
  if (found === undefined) continue;
  parentPort?.postMessage(found);
  break;
}
