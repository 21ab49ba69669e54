/** The thread that `judgeInThread` starts. */
import { parentPort, workerData } from 'node:worker_threads';
import type { PlayedTree } from '../types.ts';
import { judgeTree, type Replayed } from './judge-tree.ts';

const replayed: Replayed = new Map();
for (const tree of workerData as readonly PlayedTree[]) {
  const found = judgeTree(tree, replayed);
  if (found === undefined) continue;
  parentPort?.postMessage(found);
  break;
}
