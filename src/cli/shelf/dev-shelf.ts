import { answerFault } from '../../dev/index.ts';
import { openShelf } from '../../pipeline/shelf/index.ts';
import { stderr, stdout } from '../console.ts';
import type { DevOptions } from '../dev.ts';
import { serve, stopBySignal } from '../serve.ts';
import { previewShelf } from './preview-shelf.ts';

/** `linewright dev` of a shelf: serves previews of the courses and a page that lists them. */
export async function devShelf(folder: string, { port, editor }: DevOptions): Promise<void> {
  const preview = previewShelf(folder, editor);
  const { files } = await openShelf(folder);
  for (const { place, message, hint } of files.problems) {
    stderr.print`${place.file}:${place.start.line}:${place.start.column}  ${message} ${hint}\n`;
  }
  const { server, address } = await serve((request, response) => {
    preview.answer(request, response).catch((error: unknown) => {
      const message = error instanceof Error ? error.message : String(error);
      stderr.printLines(`${message}\n`);
      answerFault(response, error);
    });
  }, port);
  stdout.print`The shelf is at ${address}; a course is opened when you look at it. Stop with Ctrl+C.\n`;
  stopBySignal(server, preview);
}
