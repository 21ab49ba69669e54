import { rmSync } from 'node:fs';
import { chmod, cp, mkdir, rename, rm, stat } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import { onExit } from 'signal-exit';
import { carryFiles } from './carry-files.ts';
import { errorCode, ignoreMissing } from './error-code.ts';
import { beginExchange, type Exchange } from './leftovers.ts';
import { linkFiles } from './link-files.ts';
import { readMarker, writeMarker } from './marker.ts';
import { OutputError } from './output-error.ts';

/** A new output while it is being put together beside the one whose place it will take. */
export interface Replacement {
  /** Where it grows; on the device of the output. Nothing stands there at first. */
  readonly folder: string;
  /**
   * Puts a folder that was made elsewhere into it, with files of the old output that belong there as they are.
   * @param path relative to both outputs, with `/`; empty for the whole.
   * @param unchanged relative to that.
   */
  put(made: string, path: string, unchanged?: Iterable<string>): Promise<void>;
  /**
   * Gives it files of the old output that belong there as they are.
   * @param path relative to both outputs, with `/`.
   * @param unchanged relative to that.
   */
  carry(path: string, unchanged: Iterable<string>): Promise<void>;
  /**
   * Exchanges the two by two moves. If one fails the old output stands again, and if the process dies between them the
   * next run puts it back (`settleLeftovers`).
   * @returns the paths of what was kept of the old output, since no run wrote it.
   * @throws OutputError for what the user can mend.
   */
  replace(): Promise<readonly string[]>;
  /** Removes what is left of it: to be called at last, whatever came of it. */
  end(): Promise<void>;
}

/** @param out real path, as `prepareOutput` gives it. */
export async function beginReplacement(out: string): Promise<Replacement> {
  await mkdir(dirname(out), { recursive: true });
  const { end, ...exchange } = beginExchange(out);
  const { fresh } = exchange;
  const forget = onExit(() => {
    try {
      rmSync(fresh, { recursive: true, force: true, maxRetries: 3 });
    } catch {
      // A process that is ending waits for nothing: the next run removes it.
    }
  });
  return {
    folder: fresh,
    async put(made, path, unchanged = []) {
      const place = join(fresh, path);
      await mkdir(dirname(place), { recursive: true });
      await moveFolder(made, place);
      linkFiles(join(out, path), place, unchanged);
    },
    async carry(path, unchanged) {
      await mkdir(join(fresh, path), { recursive: true });
      linkFiles(join(out, path), join(fresh, path), unchanged);
    },
    async replace() {
      await writeMarker(fresh);
      const old = await stat(out).catch(ignoreMissing);
      let kept: string[] = [];
      if (old !== undefined) {
        const marker = (await readMarker(out)) ?? { files: undefined };
        kept = await carryFiles(out, fresh, marker);
        await chmod(fresh, old.mode);
      }
      await moveBoth(exchange, out, old !== undefined);
      // What cannot be removed now is no fault of the new output: the next run tries again.
      await rm(exchange.old, { recursive: true, force: true, maxRetries: 3 }).catch(() => {});
      return kept;
    },
    async end() {
      await rm(fresh, { recursive: true, force: true }).catch(() => {});
      forget();
      end();
    },
  };
}

async function moveBoth({ fresh, old }: Exchange, out: string, replaces: boolean): Promise<void> {
  if (replaces) {
    await rename(out, old).catch((error) => {
      throw new OutputError(
        `the folder ${out} cannot be replaced in one step (${errorCode(error)})`,
        'if it is a mount point or open in another program, name a folder inside it with --out',
      );
    });
  }
  try {
    await rename(fresh, out);
  } catch (error) {
    if (replaces) await rename(old, out);
    throw error;
  }
}

/** A rename, or a copy where the two folders lie on different devices. */
async function moveFolder(from: string, to: string): Promise<void> {
  try {
    await rename(from, to);
  } catch (error) {
    if (errorCode(error) !== 'EXDEV') throw error;
    await cp(from, to, { recursive: true });
  }
}
