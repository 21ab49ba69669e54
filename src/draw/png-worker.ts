/** The thread that `pngs.ts` starts: draws each job it is sent and sends the image back. */
import { parentPort } from 'node:worker_threads';
import { makePng } from './png.ts';
import type { WorkerAnswer, WorkerJob } from './pngs.ts';

const port = parentPort;
if (!port) throw new Error('png-worker runs only as a worker thread');

port.on('message', (job: WorkerJob) => {
  port.postMessage(answer(job));
});

function answer({ index, picture, ...size }: WorkerJob): WorkerAnswer {
  try {
    return { index, png: makePng(picture, size) };
  } catch (error) {
    return { index, error: error instanceof Error ? error : new Error(String(error)) };
  }
}
