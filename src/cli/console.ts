import { once } from 'node:events';
import { printable, printableLines, reportText } from '../diagnostics/index.ts';
import type { LoadedCourse } from '../pipeline/index.ts';
import { handbookAddress } from './handbook-address.ts';

export const exitCodes = { clean: 0, findings: 1, failed: 2 } as const;

/**
 * One of the two streams of a command. Nothing else writes to them, so that no text from a file, an argument or
 * another program can act on the terminal (`printable`).
 */
export interface Output {
  /** Text of ours; each value in it is kept on its line. */
  readonly print: (text: TemplateStringsArray, ...values: readonly (string | number)[]) => void;
  /** A text of several lines, such as a report. */
  readonly printLines: (text: string) => void;
  /** Resolves when the reader has caught up, so that output does not pile up in memory. */
  readonly drained: () => Promise<void>;
  /** The findings of a course, if it has any, with their source lines. */
  readonly printFindings: (found: Pick<LoadedCourse, 'diagnostics' | 'textOf'>) => void;
  /** Replaces the line of progress; an empty text clears it. Only on a terminal. */
  readonly showProgress: (text: string) => void;
  /** A file's content as it is, for another program to read. */
  readonly writeFile: (content: string | Uint8Array) => void;
  readonly isTerminal: () => boolean;
}

export const stdout = createOutput(process.stdout);
export const stderr = createOutput(process.stderr);

/** The raw streams, for a command that speaks a protocol and prints nothing. */
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

/** Ends quietly when the reader closes the output early, as `head` does. */
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
