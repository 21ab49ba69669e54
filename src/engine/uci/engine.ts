import { onOneLine } from '../../diagnostics/index.ts';
import { createLineCollector, type SearchResult } from './collect-lines.ts';
import { EngineError } from './engine-error.ts';
import { type EngineProcess, seconds, startProcess } from './engine-process.ts';
import type { UciOption } from './parse-line.ts';

/** How long a search takes: to a depth in half-moves, for so many positions, or for so many milliseconds. */
export type SearchLimit =
  | { readonly by: 'depth'; readonly number: number }
  | { readonly by: 'nodes'; readonly number: number }
  | { readonly by: 'time'; readonly number: number };

export interface EngineOptions {
  readonly program: string;
  readonly args: readonly string[];
  readonly limit: SearchLimit;
  /** How many best lines are asked for. */
  readonly lines: number;
  /** Size of the engine's table, in megabytes. */
  readonly hash: number;
  /** Settings of the engine's own, by name. */
  readonly own: readonly (readonly [name: string, value: string])[];
  /** So long an engine may say nothing before it counts as hung, in milliseconds. */
  readonly patience: number;
  /** So long it may take to start, in milliseconds; what loads a large network takes a while. */
  readonly greeting?: number;
}

export interface Engine {
  /** Its own name for itself. */
  readonly name: string;
  /**
   * Searches a position that is legal and not at its end.
   * @throws EngineError where it dies, hangs or talks nonsense; then it must be killed.
   */
  readonly search: (fen: string) => Promise<FinishedSearch>;
  readonly kill: () => void;
}

export interface FinishedSearch extends SearchResult {
  /** Its move, in UCI notation. */
  readonly best: string;
  /** Whether it fell far short of what it was asked for. */
  readonly isShort: boolean;
}

/** So long every engine may take to start, in milliseconds: the machine may have other work. */
const quickest = 10_000;

/** A search by depth or nodes has no end that we know; so many times the patience is given to it. */
const longestSearch = 20;

/** @throws EngineError where the program is no engine, or lacks a setting that was asked for. */
export async function startEngine(options: EngineOptions): Promise<Engine> {
  const program = startProcess(options.program, options.args);
  try {
    const { patience, greeting = Math.max(patience, quickest) } = options;
    const { name, offered } = await greet(program, greeting);
    for (const [option, value] of settingsOf(options, offered)) {
      program.send(`setoption name ${option}${value === '' ? '' : ` value ${value}`}`);
    }
    await settle(program, greeting);
    return {
      name,
      search: (fen) => search(program, fen, options),
      kill: program.kill,
    };
  } catch (error) {
    program.kill();
    throw error;
  }
}

async function greet(program: EngineProcess, patience: number) {
  program.send('uci');
  let name = 'an engine without a name';
  const offered = new Map<string, UciOption>();
  const until = performance.now() + patience;
  for (;;) {
    const left = until - performance.now();
    if (left <= 0)
      throw new EngineError(`it did not answer with uciok within ${seconds(patience)}`);
    const message = await program.next(left).catch((error: EngineError) => {
      throw performance.now() < until
        ? error
        : new EngineError(`it did not answer with uciok within ${seconds(patience)}`);
    });
    if (message.kind === 'uciok') return { name, offered };
    // It stands in the file of results, on one line and between tabs.
    if (message.kind === 'name') name = onOneLine(message.name).slice(0, 80);
    if (message.kind === 'option') offered.set(message.option.name.toLowerCase(), message.option);
  }
}

/** The settings to be sent, each only if the engine offers it, within what it allows. */
function settingsOf(
  { lines, hash, own }: EngineOptions,
  offered: ReadonlyMap<string, UciOption>,
): (readonly [name: string, value: string])[] {
  const ours = [
    // One process, one thread: results do not hang on which thread was first.
    ['Threads', 1],
    ['Hash', hash],
    ['MultiPV', lines],
  ] as const;
  const general = ours.flatMap(([name, value]) => {
    const option = offered.get(name.toLowerCase());
    if (option === undefined) return [];
    const most = Math.min(value, option.max ?? value);
    return [[option.name, String(Math.max(most, option.min ?? most))] as const];
  });
  const asked = own.map(([name, value]) => {
    const option = offered.get(name.toLowerCase());
    if (option === undefined) {
      const names = [...offered.values()].map((each) => each.name).join(', ');
      throw new EngineError(`it has no option ${name}${names === '' ? '' : `; it has ${names}`}`);
    }
    return [option.name, value] as const;
  });
  return [...general, ...asked];
}

/** Waits until it has done all it was told; what it said before that is passed over. */
async function settle(program: EngineProcess, patience: number): Promise<void> {
  program.send('isready');
  while ((await program.next(patience)).kind !== 'readyok');
}

async function search(
  program: EngineProcess,
  fen: string,
  { limit, patience }: EngineOptions,
): Promise<FinishedSearch> {
  // The answer to a position does not hang on those before it, and a late word on one of them is passed over.
  program.send('ucinewgame');
  await settle(program, patience);
  program.send(`position fen ${fen}`);
  program.send(`go ${limit.by === 'time' ? 'movetime' : limit.by} ${limit.number}`);
  const collected = createLineCollector();
  const most = limit.by === 'time' ? limit.number + patience : longestSearch * patience;
  const best = await answer(program, { patience, most, add: collected.add });
  const result = collected.result();
  if (result === undefined) throw new EngineError('it gave a move and no score');
  if (!collected.named(best)) throw new EngineError(`its move ${best} begins none of its lines`);
  const looked = collected.nodes();
  const isShort =
    limit.by === 'depth'
      ? result.depth < limit.number
      : limit.by === 'nodes' && looked !== undefined && looked < limit.number / 10;
  return { ...result, best, isShort };
}

interface Waiting {
  readonly patience: number;
  /** The longest time to wait for a move. */
  readonly most: number;
  readonly add: ReturnType<typeof createLineCollector>['add'];
}

/** Waits for the move that ends a search. */
async function answer(program: EngineProcess, { patience, most, add }: Waiting): Promise<string> {
  const until = performance.now() + most;
  let asked = false;
  for (;;) {
    if (performance.now() > until) throw new EngineError(`it gave no move within ${seconds(most)}`);
    const message = await program.next(patience / 2).catch((error: unknown) => {
      // A deep search may be silent for long; one that lives says that it is ready all the same.
      if (asked || !isSilence(error)) throw error;
      asked = true;
      program.send('isready');
    });
    if (message === undefined) continue;
    asked = false;
    if (message.kind === 'info') add(message.info);
    if (message.kind === 'bestmove') return message.move;
  }
}

function isSilence(error: unknown): boolean {
  return error instanceof EngineError && error.message.startsWith('it said nothing');
}
