import { spawnSync } from 'node:child_process';
import { existsSync, readFileSync, rmSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';

/** What a program took, with all processes that it started. */
export interface Cost {
  /** Seconds of the processor, of all threads, of the processes of Node that ended by themselves. */
  readonly processor: number;
  /** The same of all processes, also those that draw and are killed in the end, and the indexer of words; only where `/proc` tells. */
  readonly whole: number | undefined;
  /** Seconds on the clock. */
  readonly wall: number;
  /** Peak memory of the largest process. */
  readonly megabytes: number;
  readonly output: string;
}

export const root = path.resolve(import.meta.dirname, '../..');
export const cli = path.join(root, 'dist/cli/main.js');
const reporter = pathToFileURL(path.join(import.meta.dirname, 'report-usage.ts')).href;

export interface RunOptions {
  /** A folder for what is measured. */
  readonly work: string;
  /** The folder of what is kept; `cache` in `work` unless said. */
  readonly cache?: string;
  /** Done before it runs. */
  readonly prepare?: () => void;
  readonly cwd?: string;
  /** Exit codes that are no failure; 0 unless said. */
  readonly codes?: readonly number[];
}

/** The variables that a measured process runs with. */
export function environment({ work, cache = path.join(work, 'cache') }: RunOptions) {
  return {
    ...process.env,
    NODE_OPTIONS: `--import=${reporter}`,
    BENCH_USAGE: path.join(work, 'usage'),
    LINEWRIGHT_CACHE: cache,
    ASTRO_TELEMETRY_DISABLED: '1',
  };
}

/** Runs a script of Node and measures it. @throws Error where it fails. */
export function measure(args: readonly string[], options: RunOptions): Cost {
  const { work, cwd = work, codes = [0], prepare } = options;
  prepare?.();
  const usage = path.join(work, 'usage');
  rmSync(usage, { force: true });
  const start = performance.now();
  const before = ofEnded();
  const { status, stdout, stderr } = spawnSync(process.execPath, args, {
    cwd,
    env: environment(options),
    encoding: 'utf8',
    maxBuffer: 2 ** 30,
  });
  const wall = (performance.now() - start) / 1000;
  if (status === null || !codes.includes(status)) {
    throw new Error(`${args.join(' ')}\n${stdout.slice(-2000)}${stderr.slice(-2000)}`);
  }
  const after = ofEnded();
  const taken = readFileSync(usage, 'utf8').trim().split('\n');
  const parts = taken.map((line) => JSON.parse(line) as Pick<Cost, 'processor' | 'megabytes'>);
  return {
    processor: parts.reduce((sum, { processor }) => sum + processor, 0),
    whole: before !== undefined && after !== undefined ? after - before : undefined,
    megabytes: Math.max(...parts.map(({ megabytes }) => megabytes)),
    wall,
    output: stdout,
  };
}

/** Seconds of the processor of all processes below this one that have ended (proc_pid_stat(5): `cutime`, `cstime`). */
function ofEnded(): number | undefined {
  if (!existsSync('/proc/self/stat')) return undefined;
  const stat = readFileSync('/proc/self/stat', 'latin1');
  const fields = stat.slice(stat.lastIndexOf(')') + 2).split(' ');
  return (Number(fields[13]) + Number(fields[14])) / 100;
}

export function median(values: readonly number[]): number {
  return medianBy(values, (value) => value);
}

/** The one in the middle; of an even number, the larger of the two. */
export function medianBy<Value>(values: readonly Value[], by: (value: Value) => number): Value {
  const sorted = [...values].sort((one, other) => by(one) - by(other));
  if (sorted.length === 0) throw new Error('nothing was measured');
  return sorted[Math.floor(sorted.length / 2)] as Value;
}
