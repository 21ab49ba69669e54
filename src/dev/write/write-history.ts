import type { WriteHistory } from '../../contract/index.ts';
import { explainSystemError, isSystemError } from '../../diagnostics/index.ts';
import { FileRefusedError, readPlainFile, replacePlainFile } from '../../files/index.ts';
import { DeskRefusal } from '../desk-door.ts';

/** A change that was made of a file, and can be unmade as long as nobody else has changed it since. */
interface Change {
  readonly file: string;
  readonly before: Buffer;
  readonly after: Buffer;
  readonly line: number;
  /** `h6 Bh4`, said beside the button that takes it back. */
  readonly what: string;
  /** Where it is on the page, by id, before and behind the change. */
  readonly from: string;
  readonly to: string;
}

/** What was done, and where it is on the page. */
type Done = Pick<Change, 'file' | 'line'> & { readonly at: string };

const longest = 200;
/** Larger than any chapter may be, in bytes. */
const largest = 4_000_000;

/** Writes chapters, and takes back and makes again what was written. One act at a time. */
export interface ChapterWriter {
  /**
   * Puts a text in the place of another, whole or not at all; the byte order mark and the file's mode stay.
   * @param before what the file must hold.
   * @throws DeskRefusal for a file that holds something else by now, or cannot be written.
   */
  write(
    change: Omit<Change, 'before' | 'after'> & { readonly before: string; readonly after: string },
  ): Promise<Done>;
  undo(): Promise<Done>;
  redo(): Promise<Done>;
  readonly history: WriteHistory;
}

export function chapterWriter(folder: string): ChapterWriter {
  const done: Change[] = [];
  const undone: Change[] = [];
  let running: Promise<unknown> = Promise.resolve();
  const inTurn = <T>(act: () => Promise<T>): Promise<T> => {
    const next = running.then(act, act).catch(tell);
    running = next;
    return next;
  };

  /** Moves the last change of one list to the other, and the file with it. */
  const move = (from: Change[], to: Change[], isBack: boolean) =>
    inTurn(async () => {
      const change = from.at(-1);
      if (change === undefined) throw new DeskRefusal('There is nothing to take back.', 409);
      const { file, line, before, after } = change;
      const [is, becomes] = isBack ? [after, before] : [before, after];
      await replacePlainFile(folder, file, is, becomes);
      from.pop();
      to.push(change);
      return { file, line, at: isBack ? change.from : change.to };
    });

  return {
    write: ({ file, before, after, ...rest }) =>
      inTurn(async () => {
        const bytes = Buffer.from((await readPlainFile(folder, file, largest)).bytes);
        const all = bytes.toString('utf8');
        const mark = /^\uFEFF*/.exec(all)?.[0] ?? '';
        // A text that is no UTF-8 would not come back as it is.
        if (all !== mark + before || !Buffer.from(all).equals(bytes)) {
          throw new DeskRefusal(changedMeanwhile(file), 409);
        }
        const now = Buffer.from(mark + after);
        await replacePlainFile(folder, file, bytes, now);
        done.push({ ...rest, file, before: bytes, after: now });
        if (done.length > longest) done.shift();
        undone.length = 0;
        return { file, line: rest.line, at: rest.to };
      }),
    undo: () => move(done, undone, true),
    redo: () => move(undone, done, false),
    get history() {
      return { undo: done.at(-1)?.what, redo: undone.at(-1)?.what };
    },
  };
}

function changedMeanwhile(file: string): string {
  return `${file} was changed meanwhile, and is left as it is. Nothing was written; the page shows the file as it stands in a moment.`;
}

function tell(error: unknown): never {
  if (error instanceof FileRefusedError) {
    throw new DeskRefusal(changedMeanwhile(error.file), 409);
  }
  if (isSystemError(error)) {
    throw new DeskRefusal(`Nothing was written: ${explainSystemError(error)}`, 500);
  }
  throw error;
}
