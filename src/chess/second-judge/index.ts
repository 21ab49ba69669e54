import { createHash } from 'node:crypto';
import { readdir, readFile } from 'node:fs/promises';
import { Worker } from 'node:worker_threads';
import type { PlayedTree } from '../types.ts';
import type { Disagreement } from './judge-tree.ts';

export type { Disagreement } from './judge-tree.ts';

/** This module is TypeScript in the tests and JavaScript when built; so is the worker's file. */
const workerFile = new URL(
  import.meta.url.endsWith('.ts') ? './worker.ts' : './worker.js',
  import.meta.url,
);

/** What the judge makes is soon done with: with little room for it the thread takes half the memory. */
const resourceLimits = { maxYoungGenerationSizeMb: 12 };

/** Judges trees in a thread of its own, beside other work. @returns the first difference. */
export async function judgeInThread(
  trees: readonly PlayedTree[],
): Promise<Disagreement | undefined> {
  if (trees.length === 0) return undefined;
  return new Promise((resolve, reject) => {
    const worker = new Worker(workerFile, { workerData: trees, resourceLimits });
    worker.once('message', resolve);
    worker.once('error', reject);
    worker.once('exit', (code) => {
      if (code === 0) resolve(undefined);
      else reject(new Error(`the second judge stopped with code ${code}`));
    });
  });
}

/** A hash of the code of the core: what another edition of it played must be judged anew. */
export async function coreHash(): Promise<string> {
  const folder = new URL('../core/', import.meta.url);
  const hash = createHash('sha256');
  for (const name of (await readdir(folder)).sort())
    hash.update(await readFile(new URL(name, folder)));
  return hash.digest('hex');
}
