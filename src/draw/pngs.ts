import { availableParallelism } from 'node:os';
import { Worker } from 'node:worker_threads';
import { makePng, type PngSize, pngWidth } from './png.ts';
import { pngCache } from './png-cache.ts';

export interface PngJob extends PngSize {
  readonly svg: string;
}

export interface PngsOptions {
  /** Folder of finished images, made if missing; without it every image is drawn. */
  readonly cache?: string | undefined;
  /** Threads; as many as there are cores unless said. */
  readonly threads?: number | undefined;
}

/** What a worker is told, and what it answers. */
export interface WorkerJob extends PngJob {
  readonly index: number;
}
export type WorkerAnswer =
  | { readonly index: number; readonly png: Uint8Array }
  | { readonly index: number; readonly error: Error };

/** Fewer images than this are drawn here: starting a thread takes as long as drawing several. */
const worthThreads = 8;

/**
 * Draws many images on all cores. `onDone` gets each as it is finished, in any order, with its
 * place in `jobs`. Images are kept in the cache folder by a hash of their content: a damaged file
 * there is drawn again, and a folder that cannot be written is done without.
 * @returns how many were drawn and how many came from the cache.
 * @throws as `makePng`, or what `onDone` throws; the rest is then given up.
 */
export async function makePngs(
  jobs: readonly PngJob[],
  onDone: (index: number, png: Uint8Array) => void,
  { cache: folder, threads = availableParallelism() }: PngsOptions = {},
): Promise<{ readonly drawn: number; readonly cached: number }> {
  for (const job of jobs) pngWidth(job);
  const cache = folder === undefined ? undefined : await pngCache(folder);
  const missing: WorkerJob[] = [];
  for (const [index, job] of jobs.entries()) {
    const png = await cache?.read(job);
    if (png) onDone(index, png);
    else missing.push({ ...job, index });
  }
  const finish = async (job: WorkerJob, png: Uint8Array) => {
    onDone(job.index, png);
    await cache?.write(job, png);
  };
  if (missing.length < worthThreads || threads < 2) {
    for (const job of missing) await finish(job, makePng(job.svg, job));
  } else {
    await drawInThreads(missing, Math.min(threads, missing.length), finish);
  }
  return { drawn: missing.length, cached: jobs.length - missing.length };
}

async function drawInThreads(
  jobs: readonly WorkerJob[],
  count: number,
  finish: (job: WorkerJob, png: Uint8Array) => Promise<void>,
): Promise<void> {
  const queue = jobs.values();
  const workers = Array.from({ length: count }, () => new Worker(workerFile));
  try {
    await Promise.all(workers.map((worker) => serve(worker, queue, finish)));
  } finally {
    await Promise.all(workers.map((worker) => worker.terminate()));
  }
}

/** This module is TypeScript in the tests and JavaScript when built; so is the worker's file. */
const workerFile = new URL(
  import.meta.url.endsWith('.ts') ? './png-worker.ts' : './png-worker.js',
  import.meta.url,
);

/** Gives a worker one job after another until the queue, which all workers share, is empty. */
function serve(
  worker: Worker,
  queue: Iterator<WorkerJob>,
  finish: (job: WorkerJob, png: Uint8Array) => Promise<void>,
): Promise<void> {
  return new Promise((resolve, reject) => {
    let current: WorkerJob | undefined;
    const next = () => {
      const { value, done } = queue.next();
      if (done) resolve();
      else {
        current = value;
        worker.postMessage(value);
      }
    };
    worker.on('error', reject);
    worker.on('exit', (code) => reject(new Error(`a drawing thread stopped with code ${code}`)));
    worker.on('message', (answer: WorkerAnswer) => {
      if ('error' in answer || !current) reject('error' in answer ? answer.error : answer);
      else finish(current, answer.png).then(next, reject);
    });
    next();
  });
}
