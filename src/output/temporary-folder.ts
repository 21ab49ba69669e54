import { randomBytes } from 'node:crypto';
import { mkdirSync, rmSync } from 'node:fs';
import { lstat, readdir, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { onExit } from 'signal-exit';
import { isRunning } from './is-running.ts';

/** A folder of this process's own, that goes when the process ends, however it ends. */
export interface TemporaryFolder {
  readonly path: string;
  /** Removes it now; may be called again. */
  readonly remove: () => Promise<void>;
}

const open = new Set<string>();
let watched = false;

/**
 * Makes a folder for temporary files. It is removed when the process ends, by a signal too; after a kill
 * that nobody can answer, the next process of the same user removes it.
 */
export async function makeTemporaryFolder(): Promise<TemporaryFolder> {
  if (!watched) {
    watched = true;
    onExit(removeAll);
    await sweep();
  }
  const path = join(tmpdir(), `linewright-${process.pid}-${randomBytes(3).toString('hex')}`);
  // Known before it is there, and made at once: a signal finds either both or neither.
  open.add(path);
  mkdirSync(path, { mode: 0o700 });
  return {
    path,
    async remove() {
      await rm(path, { recursive: true, force: true, maxRetries: 3 });
      open.delete(path);
    },
  };
}

/** A process that is ending waits for nothing. What cannot be removed is left for the next one. */
function removeAll(): void {
  for (const path of open) {
    try {
      rmSync(path, { recursive: true, force: true, maxRetries: 3 });
    } catch {}
  }
}

/** Removes what processes left that were killed. */
async function sweep(): Promise<void> {
  for (const name of await readdir(tmpdir())) {
    const [, number] = /^linewright-(\d+)-\w{6}$/.exec(name) ?? [];
    if (number === undefined || isRunning(Number(number))) continue;
    const path = join(tmpdir(), name);
    // Another process may be at the same work.
    const found = await lstat(path).catch(() => undefined);
    const isOurs = found?.isDirectory() && found.uid === (process.getuid?.() ?? found.uid);
    if (isOurs) await rm(path, { recursive: true, force: true, maxRetries: 3 }).catch(() => {});
  }
}
