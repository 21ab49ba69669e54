import type { CourseTable } from '../../contract/course-table.ts';
import { loadScript } from '../load-script.ts';
import type { Report } from './compare-blob.ts';
import type { Task, WorkerMessage } from './worker.ts';

export interface Running {
  /** Ends it; nothing is reported any more. */
  readonly stop: () => void;
}

/** What happens to a comparison: reports, then its end, with the reason if it failed. */
export interface Listener {
  readonly onReport: (report: Report) => void;
  readonly onEnd: (failure?: string) => void;
}

/** Compares a file with the course in a worker, or in slices where there can be none. */
export function runComparison(
  script: string,
  table: CourseTable,
  blob: Blob,
  listener: Listener,
): Running {
  let stop = () => {};
  const inSlices = () => {
    ({ stop } = runInSlices(script, table, blob, listener));
  };
  try {
    ({ stop } = runInWorker(script, { table, blob }, listener, inSlices));
  } catch {
    // Refused, as from file:// by Chromium.
    inSlices();
  }
  return { stop: () => stop() };
}

function runInWorker(
  script: string,
  task: Task,
  { onReport, onEnd }: Listener,
  onRefused: () => void,
): Running {
  const worker = new Worker(script);
  let answered = false;
  worker.addEventListener('message', ({ data }: MessageEvent<WorkerMessage>) => {
    answered = true;
    if (data.kind === 'report') onReport(data);
    else {
      worker.terminate();
      onEnd(data.failure);
    }
  });
  worker.addEventListener('error', (event) => {
    worker.terminate();
    if (answered) onEnd(event.message);
    else onRefused();
  });
  worker.postMessage(task);
  return { stop: () => worker.terminate() };
}

class Stopped extends Error {}

function runInSlices(
  script: string,
  table: CourseTable,
  blob: Blob,
  { onReport, onEnd }: Listener,
): Running {
  let stopped = false;
  const rest = () => new Promise<void>((resolve) => setTimeout(resolve));
  const run = async () => {
    if (globalThis.compareBlobHere === undefined) await loadScript(script);
    const compare = globalThis.compareBlobHere;
    if (compare === undefined) throw new Error(script);
    await compare(table, blob, async (report) => {
      if (stopped) throw new Stopped();
      onReport(report);
      await rest();
    });
  };
  run().then(
    () => onEnd(),
    (error: unknown) => {
      if (!(error instanceof Stopped)) onEnd(String(error));
    },
  );
  return {
    stop: () => {
      stopped = true;
    },
  };
}
