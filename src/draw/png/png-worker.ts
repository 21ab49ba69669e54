/** The process that `pngs.ts` starts: draws each job it is sent and sends the image back. */
import { makePng } from './png.ts';
import type { WorkerAnswer, WorkerJob } from './pngs.ts';

if (!process.send) throw new Error('png-worker runs only as a child process');

// Without the process that started it there is nothing to do: that one was interrupted, or killed.
process.on('disconnect', () => process.exit());
process.on('message', (job: WorkerJob) => {
  process.send?.(answer(job), (error: Error | null) => {
    if (error) process.exit(1);
  });
});

function answer({ index, picture, ...size }: WorkerJob): WorkerAnswer {
  try {
    return { index, png: makePng(picture, size) };
  } catch (error) {
    return { index, error: error instanceof Error ? error : new Error(String(error)) };
  }
}
