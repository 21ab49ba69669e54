import { type ChildProcessWithoutNullStreams, spawn } from 'node:child_process';
import { EngineError } from './engine-error.ts';
import { parseUciLine, type UciMessage } from './parse-line.ts';
import { createLineSplitter } from './split-lines.ts';

/** A program that speaks UCI, and what it says. */
export interface EngineProcess {
  readonly send: (command: string) => void;
  /**
   * The next thing it says.
   * @throws EngineError when the time is over, in milliseconds, or the program has ended.
   */
  readonly next: (within: number) => Promise<UciMessage>;
  readonly kill: () => void;
}

/** So much of what it writes to its standard error is told when it ends. */
const mostTold = 200;

/** Starts a program; it is found out by what it says or does not say whether it is an engine. */
export function startProcess(program: string, args: readonly string[]): EngineProcess {
  const child = spawn(program, args, { stdio: ['pipe', 'pipe', 'pipe'], windowsHide: true });
  const split = createLineSplitter();
  const waiting: UciMessage[] = [];
  let wake: (() => void) | undefined;
  let ended: EngineError | undefined;
  let complaint = '';
  const end = (reason: string) => {
    ended ??= new EngineError(reason);
    wake?.();
  };

  child.stdout.setEncoding('utf8');
  child.stdout.on('data', (chunk: string) => {
    for (const line of split(chunk)) {
      const message = parseUciLine(line);
      // An engine may say as much as it likes of what nobody asked for.
      if (message.kind !== 'other') waiting.push(message);
    }
    wake?.();
  });
  // It must be read, or the engine would wait for ever once the pipe is full.
  child.stderr.setEncoding('utf8');
  child.stderr.on('data', (chunk: string) => {
    complaint = (complaint + chunk).slice(-4 * mostTold);
  });
  // What is sent to a program that has ended is lost; that it has ended is told by `close`.
  child.stdin.on('error', () => {});
  child.on('error', (error: NodeJS.ErrnoException) => end(whyNotStarted(program, error)));
  child.on('close', (code, signal) => {
    const how = signal === null ? `it ended with code ${code}` : `it was ended by ${signal}`;
    const last =
      complaint
        .trim()
        .split(/\s*\n\s*/)
        .at(-1) ?? '';
    end(last === '' ? how : `${how}, and said: ${last.slice(0, mostTold)}`);
  });

  return {
    send: (command) => {
      child.stdin.write(`${command}\n`);
    },
    async next(within) {
      const until = performance.now() + within;
      for (;;) {
        const message = waiting.shift();
        if (message !== undefined) return message;
        if (ended !== undefined) throw ended;
        const left = until - performance.now();
        if (left <= 0) throw new EngineError(`it said nothing for ${seconds(within)}`);
        await new Promise<void>((resolve) => {
          const timer = setTimeout(resolve, left);
          wake = () => {
            clearTimeout(timer);
            resolve();
          };
        });
        wake = undefined;
      }
    },
    kill: () => killProcess(child),
  };
}

function killProcess(child: ChildProcessWithoutNullStreams): void {
  child.kill('SIGKILL');
  // What it started itself may hold the pipes open, and they would keep us waiting.
  child.stdout.destroy();
  child.stderr.destroy();
}

function whyNotStarted(program: string, { code, message }: NodeJS.ErrnoException): string {
  if (code === 'ENOENT') return `there is no program ${program}`;
  if (code === 'EACCES') return `${program} may not be run: it is no program, or not yours to run`;
  return `it could not be started: ${message}`;
}

/** `60 seconds`. */
export function seconds(milliseconds: number): string {
  const number = milliseconds / 1000;
  return `${number} ${number === 1 ? 'second' : 'seconds'}`;
}
