import { randomBytes } from 'node:crypto';
import { cp, mkdir, readdir, rename, rm, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { SiteError } from '../site-error.ts';

/** Stands in every output, so that a build never replaces a folder that is something else. */
export const markerFile = 'linewright.json';

/** @throws SiteError if a build must not replace what stands at `out`. */
export async function checkReplaceable(out: string): Promise<void> {
  const found = await stat(out).catch(ignoreMissing);
  if (found === undefined) return;
  if (!found.isDirectory()) {
    throw new SiteError(`${out} is a file, not a folder`, 'name another folder with --out');
  }
  const entries = await readdir(out);
  if (entries.length > 0 && !entries.includes(markerFile)) {
    throw new SiteError(
      `the folder ${out} holds something that is no earlier build, and would be lost`,
      'name another folder with --out, or empty this one first',
    );
  }
}

/**
 * Puts the folder `made` in the place of `out` in one step: until then the old output stands
 * whole, and if the step fails it stands again.
 */
export async function replaceFolder(made: string, out: string): Promise<void> {
  await checkReplaceable(out);
  const parent = dirname(out);
  await mkdir(parent, { recursive: true });
  const tag = randomBytes(4).toString('hex');
  const fresh = join(parent, `.${basename(out)}.new-${tag}`);
  const old = join(parent, `.${basename(out)}.old-${tag}`);
  try {
    await moveFolder(made, fresh);
    const replaces = (await stat(out).catch(ignoreMissing)) !== undefined;
    if (replaces) await rename(out, old).catch((error) => cannotMove(out, error));
    try {
      await rename(fresh, out);
    } catch (error) {
      if (replaces) await rename(old, out);
      throw error;
    }
  } finally {
    await rm(fresh, { recursive: true, force: true });
  }
  await keepHostFiles(old, out);
  await rm(old, { recursive: true, force: true, maxRetries: 3 });
}

/**
 * Moves along what no build makes and a host or a repository keeps in the folder, such as `.git`,
 * `.nojekyll`, `.well-known` and `CNAME`.
 */
async function keepHostFiles(old: string, out: string): Promise<void> {
  const names = await readdir(old).catch((error) => ignoreMissing(error) ?? []);
  for (const name of names) {
    if (name.startsWith('.') || name === 'CNAME') await rename(join(old, name), join(out, name));
  }
}

/** A rename, or a copy where the two folders lie on different devices. */
async function moveFolder(from: string, to: string): Promise<void> {
  try {
    await rename(from, to);
  } catch (error) {
    if (codeOf(error) !== 'EXDEV') throw error;
    await cp(from, to, { recursive: true });
  }
}

function cannotMove(out: string, error: unknown): never {
  throw new SiteError(
    `the folder ${out} cannot be replaced in one step (${codeOf(error)})`,
    'if it is a mount point or open in another program, name a folder inside it with --out',
  );
}

function ignoreMissing(error: unknown): undefined {
  if (codeOf(error) !== 'ENOENT') throw error;
  return undefined;
}

function codeOf(error: unknown): string {
  return error instanceof Error && 'code' in error ? String(error.code) : String(error);
}
