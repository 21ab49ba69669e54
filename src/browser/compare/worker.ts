/**
 * The comparison itself, in a worker. Where a browser refuses workers, as Chromium does for pages
 * opened from a folder, the page loads the same script and runs it in slices.
 */
import type { CourseTable } from '../../contract/course-table.ts';
import { compareBlob, type Report } from './compare-blob.ts';

declare global {
  var compareBlobHere: typeof compareBlob | undefined;
}

export interface Task {
  readonly table: CourseTable;
  readonly blob: Blob;
}

/** What the worker answers: reports, then once the end of the work, with the reason if it failed. */
export type WorkerMessage =
  | ({ readonly kind: 'report' } & Report)
  | { readonly kind: 'done'; readonly failure?: string };

if (typeof document === 'undefined') {
  const answer = (message: WorkerMessage) => postMessage(message);
  addEventListener('message', ({ data }: MessageEvent<Task>) => {
    compareBlob(data.table, data.blob, (report) => answer({ kind: 'report', ...report })).then(
      () => answer({ kind: 'done' }),
      (error: unknown) => answer({ kind: 'done', failure: String(error) }),
    );
  });
} else globalThis.compareBlobHere = compareBlob;
