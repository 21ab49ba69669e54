import { once } from 'node:events';
import { printable, printableLines, reportText } from '../diagnostics/index.ts';
import { handbookAddress } from './handbook-address.ts';
import type { LoadedCourse } from './load-course.ts';

/** Exit codes of every command. */
export const exitCodes = { clean: 0, findings: 1, failed: 2 } as const;

/**
 * One of the two streams that a command prints to. Nothing else in the program writes to them, so
 * that no text of a file, an argument or another program acts on the terminal (`printable`).
 */
export interface Output {
  /** A text of our own with values in it, each of which stays on its line. */
  readonly print: (text: TemplateStringsArray, ...values: readonly (string | number)[]) => void;
  /** A text of several lines, such as a report. */
  readonly printLines: (text: string) => void;
  /** Until others have taken what was printed, so that it does not pile up in memory. */
  readonly drained: () => Promise<void>;
  /** The findings of a course, if it has any, with their source lines. */
  readonly printFindings: (found: Pick<LoadedCourse, 'diagnostics' | 'textOf'>) => void;
  /** A line that the next one takes the place of; nothing clears it. Silent where no terminal is. */
  readonly showProgress: (text: string) => void;
  /** A file's content as it is, for another program to read. */
  readonly writeFile: (content: string | Uint8Array) => void;
  readonly isTerminal: () => boolean;
}

export const stdout = createOutput(process.stdout);
export const stderr = createOutput(process.stderr);

/** The streams of a protocol that a command speaks with another program; nothing is printed beside it. */
export function standardStreams() {
  return { input: process.stdin, output: process.stdout };
}

function createOutput(stream: NodeJS.WriteStream): Output {
  return {
    print: (text, ...values) => {
      stream.write(String.raw({ raw: text }, ...values.map((value) => printable(String(value)))));
    },
    printLines: (text) => {
      stream.write(printableLines(text));
    },
    drained: async () => {
      if (stream.writableNeedDrain) await once(stream, 'drain');
    },
    printFindings: ({ diagnostics, textOf }) => {
      if (diagnostics.length === 0) return;
      stream.write(
        reportText(diagnostics, { textOf, color: takesColor(stream), handbook: handbookAddress() }),
      );
    },
    showProgress: (text) => {
      if (stream.isTTY) stream.write(`\r\x1b[K${printable(text)}`);
    },
    writeFile: (content) => {
      stream.write(content);
    },
    isTerminal: () => stream.isTTY,
  };
}

/** Whoever reads the output may close it early, as `head` does: that is no fault. */
export function endWhenClosed(): void {
  for (const stream of [process.stdout, process.stderr]) {
    stream.on('error', (error: NodeJS.ErrnoException) => {
      if (error.code !== 'EPIPE') throw error;
      process.exit();
    });
  }
}

/** Whether a stream takes colours: a terminal, unless NO_COLOR or FORCE_COLOR say otherwise. */
function takesColor(stream: NodeJS.WriteStream): boolean {
  if (stream.isTTY) return stream.hasColors();
  const { FORCE_COLOR: force } = process.env;
  return force !== undefined && force !== '0' && force !== 'false';
}

export function count(number: number, one: string, many = `${one}s`): string {
  return `${number} ${number === 1 ? one : many}`;
}
