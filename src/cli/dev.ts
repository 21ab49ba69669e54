import { openPreview } from '../dev/index.ts';
import { stderr, stdout } from './console.ts';
import { courseIn } from './load-course.ts';
import { serve, stopBySignal } from './serve.ts';

export interface DevOptions {
  readonly port: number;
  /** A command that opens a file at a line, such as `code -g {file}:{line}:{column}`. */
  readonly editor?: string | undefined;
}

/** `linewright dev`: serves the course and follows its files; findings are marked on the pages and printed. */
export async function dev(folder: string, { port, editor }: DevOptions): Promise<void> {
  const preview = await openPreview({
    folder,
    source: courseIn(folder),
    editor,
    report: {
      read: stdout.printFindings,
      shown: () => stdout.print`${new Date().toLocaleTimeString()}  The pages are up to date.\n`,
      unshown: (why) => stdout.print`${why}\n`,
      failed: (message) => stderr.printLines(`${message}\n`),
    },
  });
  const { server, address } = await serve(preview.answer, port);
  stdout.print`The course is at ${address} and follows your files. Stop with Ctrl+C.\n`;
  stopBySignal(server, preview);
}
