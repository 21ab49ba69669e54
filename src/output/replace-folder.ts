import { chmod, cp, mkdir, rename, rm, stat } from 'node:fs/promises';
import { dirname } from 'node:path';
import { carryFiles } from './carry-files.ts';
import { errorCode, ignoreMissing } from './error-code.ts';
import { beginExchange, type Exchange } from './leftovers.ts';
import { linkFiles } from './link-files.ts';
import { readMarker, writeMarker } from './marker.ts';
import { OutputError } from './output-error.ts';

/**
 * Puts the folder `made` in the place of `out`. The old output stands whole until the new one is whole
 * beside it, with all that no run wrote; then two moves exchange them. If one fails the old output
 * stands again, and if the process dies between them the next run puts it back (`settleLeftovers`).
 * @param out real path, as `prepareOutput` gives it.
 * @param unchanged files of the old output, relative to it, that belong to the new one as they are.
 * @returns the paths of what was kept of the old output.
 * @throws OutputError for what the user can mend.
 */
export async function replaceFolder(
  made: string,
  out: string,
  unchanged: Iterable<string> = [],
): Promise<readonly string[]> {
  await mkdir(dirname(out), { recursive: true });
  const { end, ...exchange } = beginExchange(out);
  try {
    await moveFolder(made, exchange.fresh);
    linkFiles(out, exchange.fresh, unchanged);
    await writeMarker(exchange.fresh);
    const old = await stat(out).catch(ignoreMissing);
    let kept: string[] = [];
    if (old !== undefined) {
      const marker = (await readMarker(out)) ?? { files: undefined };
      kept = await carryFiles(out, exchange.fresh, marker);
      await chmod(exchange.fresh, old.mode);
    }
    await moveBoth(exchange, out, old !== undefined);
    // What cannot be removed now is no fault of the new output: the next run tries again.
    await rm(exchange.old, { recursive: true, force: true, maxRetries: 3 }).catch(() => {});
    return kept;
  } finally {
    await rm(exchange.fresh, { recursive: true, force: true }).catch(() => {});
    end();
  }
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
