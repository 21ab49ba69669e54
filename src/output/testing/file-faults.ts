import type * as fs from 'node:fs/promises';
import { join } from 'node:path';

type Files = typeof fs;

/**
 * What happens at a call: the process is killed before it, or in the middle of it (a part is done);
 * or the system refuses it with this code.
 */
export type FaultKind = 'killed before' | 'killed within' | 'EIO' | 'ENOSPC' | 'EXDEV';

export interface FileFaults {
  /** Stands in for `node:fs/promises`. */
  readonly files: Files;
  /** Calls since the last `plan`, as `rename /a -> /b`. */
  readonly calls: readonly string[];
  /** Decides for each call from now on, which has a number from 1, whether it goes wrong. */
  plan(faultOf: (call: string, number: number) => FaultKind | undefined): void;
  /** Resolves when the planned kill has come: whoever made that call waits for ever, as if killed. */
  readonly killed: () => Promise<'killed'>;
}

/**
 * Counts the calls to the file system and lets one of them go wrong. A kill is a call that never comes
 * back, so nothing behind it runs, no `finally` either.
 */
export function makeFileFaults(original: Files): FileFaults {
  let calls: string[] = [];
  let fails: Parameters<FileFaults['plan']>[0] = () => undefined;
  let kill = later();

  const wrap = (name: string, call: (...args: unknown[]) => unknown) =>
    async function faulty(...args: unknown[]) {
      const paths = args.filter((arg) => typeof arg === 'string' && arg.startsWith('/'));
      const shown = `${name} ${paths.join(' -> ')}`;
      calls.push(shown);
      const kind = fails(shown, calls.length);
      if (kind === undefined) return call(...args);
      if (kind === 'killed within') await doPart(original, name, args);
      if (kind.startsWith('killed')) {
        kill.resolve('killed');
        return new Promise(() => {});
      }
      throw Object.assign(new Error(`${kind}: planned, ${shown}`), { code: kind, syscall: name });
    };

  const functions = Object.entries(original).filter(([, value]) => typeof value === 'function');
  const wrapped = Object.fromEntries(
    functions.map(([name, value]) => [name, wrap(name, value as () => unknown)]),
  );
  const files = { ...original, ...wrapped } as Files;
  return {
    files: Object.assign(files, { default: files }),
    get calls() {
      return calls;
    },
    plan(faultOf) {
      calls = [];
      kill = later();
      fails = faultOf;
    },
    killed: () => kill.promise,
  };
}

/** The calls that are many steps: one step of each. The others happen or do not. */
async function doPart(files: Files, name: string, args: unknown[]): Promise<void> {
  const [path, second] = args;
  if (typeof path !== 'string') return;
  if (name === 'writeFile' && typeof second === 'string') {
    await files.writeFile(path, second.slice(0, second.length / 2));
  }
  if (name !== 'rm' && name !== 'cp') return;
  const [first] = await files.readdir(path).catch(() => []);
  if (first === undefined) return;
  if (name === 'rm') await files.rm(join(path, first), { recursive: true });
  else if (typeof second === 'string') {
    await files.mkdir(second, { recursive: true });
    await files.cp(join(path, first), join(second, first), { recursive: true });
  }
}

/** A promise that is kept from outside. */
function later(): { readonly promise: Promise<'killed'>; resolve(value: 'killed'): void } {
  let resolve: (value: 'killed') => void = () => {};
  const promise = new Promise<'killed'>((keep) => {
    resolve = keep;
  });
  return { promise, resolve };
}
