import { availableParallelism } from 'node:os';
import { onOneLine, UserError } from '../../diagnostics/index.ts';
import {
  doubtfulKeys,
  type Engine,
  EngineError,
  type EngineOptions,
  lookAt,
  type PositionToLookAt,
  positionsToLookAt,
  type SearchLimit,
  startEngine,
} from '../../engine/index.ts';
import { type EngineFact, factName } from '../../facts/index.ts';
import { command } from '../called-as.ts';
import { count, exitCodes, stderr, stdout } from '../console.ts';
import { loadCourse } from '../load-course.ts';
import { createProgressLine } from '../progress-line.ts';
import { timeLeft } from '../time-left.ts';
import { type EngineResults, openResults } from './engine-results.ts';
import type { ResultPlace } from './result-places.ts';

export interface EngineCommandOptions {
  readonly engine: string;
  readonly argument: readonly string[];
  readonly option: readonly (readonly [name: string, value: string])[];
  readonly depth?: number;
  readonly nodes?: number;
  /** In seconds. */
  readonly time?: number;
  readonly lines: number;
  readonly hash: number;
  readonly jobs?: number;
  readonly keep: ResultPlace;
  /** In seconds. */
  readonly patience: number;
  readonly prune: boolean;
  /** Only positions for which the kept results give a finding. */
  readonly doubtful?: boolean;
}

/** Default search of a position: a second or two of one core. */
const defaultNodes = 1_000_000;

/** Milliseconds between writes: at most this much work is lost by a kill. */
const saving = 5000;

/**
 * `linewright engine`: has a UCI engine search positions of a course and keeps the results, which `check`
 * reads. Changes no chapter.
 */
export async function engine(folder: string, options: EngineCommandOptions): Promise<number> {
  const { course, diagnostics } = await loadCourse(folder);
  const results = await openResults(folder, options.keep);
  const all = positionsToLookAt(course);
  const told = diagnostics.flatMap(({ rule, place }) =>
    rule.startsWith('engine-') ? [place] : [],
  );
  const doubtful = options.doubtful ? doubtfulKeys(course, told) : undefined;
  const wanted = all.filter(({ position: { key } }) => doubtful?.has(key) ?? true);
  const limit = limitOf(options);
  const setUp: EngineOptions = {
    program: options.engine,
    args: options.argument,
    limit,
    lines: options.lines,
    hash: options.hash,
    own: options.option,
    patience: options.patience * 1000,
  };
  const first = await startFirst(setUp);
  const settings = settingsText(setUp);
  const known = new Set(results.known.map(factName));
  const open = wanted.filter(
    ({ position: { key } }) => !known.has(factName({ key, engine: first.name, settings })),
  );
  stdout.print`${first.name}, ${settings}: ${count(wanted.length, 'position')}, ${wanted.length - open.length} known already.\n`;
  const run = await look(open, { first, setUp, settings, results, jobs: jobsOf(options) });
  if (options.prune) {
    const needed = new Set(all.map(({ position }) => position.key));
    await results.save([], ({ key }) => needed.has(key));
  }
  report(run, results, folder);
  return run.left.length + run.unseen > 0 ? exitCodes.findings : exitCodes.clean;
}

function limitOf({ depth, nodes, time }: EngineCommandOptions): SearchLimit {
  if (depth !== undefined) return { by: 'depth', number: depth };
  if (time !== undefined) return { by: 'time', number: Math.round(time * 1000) };
  return { by: 'nodes', number: nodes ?? defaultNodes };
}

/** Settings that results depend on, beside the engine. */
function settingsText({ limit, lines, hash, own }: EngineOptions): string {
  const searched =
    limit.by === 'time' ? `time ${limit.number / 1000} s` : `${limit.by} ${limit.number}`;
  const others = own.map(([name, value]) => onOneLine(`${name}=${value}`)).sort();
  return [searched, `lines ${lines}`, `hash ${hash}`, ...others].join(', ');
}

/** Leaves one core to the user. */
function jobsOf({ jobs }: EngineCommandOptions): number {
  return jobs ?? Math.max(1, availableParallelism() - 1);
}

async function startFirst(options: EngineOptions): Promise<Engine> {
  try {
    return await startEngine(options);
  } catch (error) {
    if (!(error instanceof EngineError)) throw error;
    throw new UserError(
      `the engine ${options.program} cannot be used: ${error.message}`,
      'name a program that speaks UCI with --engine, such as --engine stockfish',
    );
  }
}

interface LookSetUp {
  readonly first: Engine;
  readonly setUp: EngineOptions;
  readonly settings: string;
  readonly results: EngineResults;
  readonly jobs: number;
}

interface Run {
  readonly looked: number;
  /** Where the engine failed twice. */
  readonly left: readonly { readonly at: PositionToLookAt; readonly reason: string }[];
  readonly unseen: number;
  readonly wasStopped: boolean;
}

async function look(
  open: readonly PositionToLookAt[],
  { first, setUp, settings, results, jobs }: LookSetUp,
): Promise<Run> {
  const progress = createProgressLine(stderr);
  const started = performance.now();
  const left: Run['left'][number][] = [];
  /** All results of the run: each write has them all, whatever happened to the file. */
  const found: EngineFact[] = [];
  let saved = started;
  let writing: Promise<void> = Promise.resolve();
  const save = () => {
    saved = performance.now();
    if (found.length > 0) writing = writing.then(() => results.save(found));
  };
  const show = () => {
    const done = found.length + left.length;
    const rest = timeLeft(performance.now() - started, done, open.length);
    progress.show(`looking at positions: ${done}/${open.length}${rest && `, ${rest}`}`, 0, 0);
  };

  const stopping = new AbortController();
  const stop = () => stopping.abort();
  const signals = ['SIGINT', 'SIGTERM', 'SIGHUP'] as const;
  // A second signal ends the program at once.
  for (const signal of signals) process.once(signal, stop);
  try {
    show();
    await lookAt(open, {
      jobs,
      first,
      settings,
      start: () => startEngine(setUp),
      signal: stopping.signal,
      onFact(fact) {
        found.push(fact);
        if (performance.now() - saved > saving) save();
        show();
      },
      onLeft(at, reason) {
        left.push({ at, reason });
        show();
      },
    });
  } finally {
    save();
    await writing;
    progress.clear();
    for (const signal of signals) process.off(signal, stop);
  }
  const unseen = open.length - found.length - left.length;
  return { looked: found.length, left, unseen, wasStopped: stopping.signal.aborted };
}

function report(
  { looked, left, unseen, wasStopped }: Run,
  { place }: EngineResults,
  folder: string,
) {
  stdout.print`${count(looked, 'position')} looked at.\n`;
  if (left.length > 0) {
    stdout.print`${count(left.length, 'position')} left, at which the engine failed twice:\n`;
    for (const { at, reason } of left) {
      const where = at.after === '' ? 'at the start of a block' : `after ${at.after}`;
      stdout.print`  ${at.place}  ${where}: ${reason}\n`;
    }
  }
  if (unseen > 0) {
    const why = wasStopped ? 'Stopped' : 'Given up, since the engine failed again and again';
    stdout.print`${why}: ${count(unseen, 'position')} to go. Run the command again to go on.\n`;
  }
  if (looked > 0) {
    stdout.print`The results are in ${place}; \`${command('check', folder)}\` tells what they say of the course.\n`;
  }
}
