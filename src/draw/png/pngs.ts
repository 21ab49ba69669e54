import { type ChildProcess, fork } from 'node:child_process';
import { availableParallelism } from 'node:os';
import { fileURLToPath } from 'node:url';
import { makePng, type Picture, type PngJob, type PngSize, pngWidth } from './png.ts';
import { pngCache } from './png-cache.ts';

export interface PngsOptions {
  /** Folder of finished images, made if missing; without it every image is drawn. */
  readonly cache?: string | undefined;
  /** Processes; as many as there are cores unless said. */
  readonly processes?: number | undefined;
  readonly onProcesses?: (() => void) | undefined;
}

/** What a worker is told, and what it answers. */
export interface WorkerJob extends PngSize {
  readonly index: number;
  readonly picture: Picture;
}
export type WorkerAnswer =
  | { readonly index: number; readonly png: Uint8Array }
  | { readonly index: number; readonly error: Error };

/** Fewer images than this are drawn here: starting a process takes as long as drawing several. */
const worthProcesses = 8;

/**
 * Draws many images on all cores. `onDone` gets each as it is finished, in any order, with its
 * place in `jobs`, and may have it wait. Images are kept in the cache folder by a hash of their content: a damaged file
 * there is drawn again, and a folder that cannot be written is done without.
 * @returns how many were drawn and how many came from the cache.
 * @throws as `makePng`, or what `onDone` throws; the rest is then given up.
 */
export async function makePngs(
  jobs: readonly PngJob[],
  onDone: (index: number, png: Uint8Array) => void | Promise<void>,
  { cache: folder, processes = availableParallelism(), onProcesses }: PngsOptions = {},
): Promise<{ readonly drawn: number; readonly cached: number }> {
  for (const job of jobs) pngWidth(job);
  const cache = folder === undefined ? undefined : await pngCache(folder);
  const missing: Missing[] = [];
  for (const [index, job] of jobs.entries()) {
    const png = await cache?.read(job);
    if (png) await onDone(index, png);
    else missing.push({ job, index });
  }
  const finish = async ({ job, index }: Missing, png: Uint8Array) => {
    await onDone(index, png);
    await cache?.write(job, png);
  };
  if (missing.length < worthProcesses || processes < 2) {
    for (const found of missing) {
      await finish(found, makePng(await pictureOf(found.job), found.job));
    }
  } else {
    onProcesses?.();
    await drawInProcesses(missing, Math.min(processes, missing.length), finish);
  }
  return { drawn: missing.length, cached: jobs.length - missing.length };
}

/** A job that the cache has no image of, with its place. */
interface Missing {
  readonly job: PngJob;
  readonly index: number;
}

async function pictureOf(job: PngJob): Promise<Picture> {
  return 'svg' in job ? job.svg : job.draw();
}

/**
 * Processes rather than threads: what resvg takes for an image stays with a process until it ends, half a gigabyte
 * for a thousand cards.
 */
async function drawInProcesses(
  jobs: readonly Missing[],
  count: number,
  finish: (job: Missing, png: Uint8Array) => Promise<void>,
): Promise<void> {
  const queue = jobs.values();
  const workers = Array.from({ length: count }, startWorker);
  try {
    await Promise.all(workers.map((worker) => serve(worker, queue, finish)));
  } finally {
    for (const worker of workers) worker.kill('SIGKILL');
  }
}

/** This module is TypeScript in the tests and JavaScript when built; so is the worker's file. */
const workerFile = fileURLToPath(
  new URL(import.meta.url.endsWith('.ts') ? './png-worker.ts' : './png-worker.js', import.meta.url),
);

function startWorker(): ChildProcess {
  return fork(workerFile, [], {
    // What a collection frees are images, which the collector counts as some bytes each: let it come often.
    execArgv: ['--max-semi-space-size=4'],
    serialization: 'advanced',
    stdio: ['ignore', 'ignore', 'inherit', 'ipc'],
  });
}

/** Gives a worker one job after another until the queue, which all workers share, is empty. */
function serve(
  worker: ChildProcess,
  queue: Iterator<Missing>,
  finish: (job: Missing, png: Uint8Array) => Promise<void>,
): Promise<void> {
  return new Promise((resolve, reject) => {
    let current: Missing | undefined;
    const next = async () => {
      const { value, done } = queue.next();
      if (done) return resolve();
      current = value;
      const { width, scale, colours, level } = value.job;
      const picture = await pictureOf(value.job);
      const size = { width, scale, colours, level };
      const job: WorkerJob = { index: value.index, picture, ...size };
      worker.send(job);
    };
    worker.on('error', reject);
    worker.on('exit', (code, signal) =>
      reject(new Error(`a drawing process stopped with ${signal ?? `code ${code}`}`)),
    );
    worker.on('message', (answer: WorkerAnswer) => {
      if ('error' in answer || !current) reject('error' in answer ? answer.error : answer);
      else finish(current, answer.png).then(next).catch(reject);
    });
    next().catch(reject);
  });
}
