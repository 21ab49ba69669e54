import { randomBytes } from 'node:crypto';
import { lstat, readdir, rename, rm, rmdir, stat } from 'node:fs/promises';
import { basename, dirname, join } from 'node:path';
import { ignoreMissing } from './error-code.ts';
import { isHostFile } from './host-files.ts';
import { isRunning } from './is-running.ts';
import { readMarker } from './marker.ts';
import { OutputError } from './output-error.ts';

/** Where the folders of one exchange stand, beside the one that is replaced. */
export interface Exchange {
  /** The new output, whole before anything is moved. */
  readonly fresh: string;
  /** The earlier output, moved away. */
  readonly old: string;
}

/** Tags of this process's exchanges: an earlier one of the same number may have been killed. */
const running = new Set<string>();

/**
 * Names the two folders of a new exchange after this process, so that another one can tell whether
 * they are still needed. `end` says that they are not.
 */
export function beginExchange(out: string): Exchange & { readonly end: () => void } {
  const tag = `${process.pid}-${randomBytes(4).toString('hex')}`;
  running.add(tag);
  return { ...foldersOf(out, tag), end: () => running.delete(tag) };
}

/**
 * Undoes or completes every exchange of this output that was cut short. The folders themselves tell how
 * far it came: nothing is moved before the new output is whole, and the earlier one is moved away
 * before the new one takes its place.
 * @param out real path of the output.
 * @throws OutputError where that cannot be decided, since something else now stands there.
 */
export async function settleLeftovers(out: string): Promise<void> {
  const names = await readdir(dirname(out)).catch((error) => ignoreMissing(error) ?? []);
  const tags = new Set(names.flatMap((name) => tagOf(name, basename(out)) ?? []));
  for (const tag of tags) if (isOver(tag)) await settle(out, foldersOf(out, tag));
}

async function settle(out: string, { fresh, old }: Exchange): Promise<void> {
  const [there, hasOld] = await Promise.all([isFilled(out), exists(old)]);
  if (there && hasOld && (await exists(fresh))) {
    throw new OutputError(
      `a build was cut short, and something else now stands at ${out}`,
      `keep what you need of ${out}, ${fresh} and ${old}, and remove the last two`,
    );
  }
  if (hasOld && !there) {
    // Cut short between the two moves. Not every system moves a folder over an empty one.
    await rmdir(out).catch(ignoreMissing);
    await rename(old, out);
  }
  await rm(fresh, { recursive: true, force: true, maxRetries: 3 });
  if (!(await exists(old))) return;
  await takeHostFiles(old, out);
  await rm(old, { recursive: true, force: true, maxRetries: 3 });
}

/** The first edition, whose markers have no list, moved the host's files after the exchange. */
async function takeHostFiles(old: string, out: string): Promise<void> {
  const marker = await readMarker(old);
  if (marker === undefined || marker.files !== undefined) return;
  for (const name of await readdir(old)) {
    if (isHostFile(name) && !(await exists(join(out, name)))) {
      await rename(join(old, name), join(out, name));
    }
  }
}

function foldersOf(out: string, tag: string): Exchange {
  const at = (what: string) => join(dirname(out), `.${basename(out)}.${what}-${tag}`);
  return { fresh: at('new'), old: at('old') };
}

/** The tag in the name of a leftover of this output. */
function tagOf(name: string, out: string): string | undefined {
  if (!name.startsWith(`.${out}.`)) return undefined;
  return /^(?:new|old)-((?:\d+-)?[0-9a-f]{8})$/.exec(name.slice(out.length + 2))?.[1];
}

/** Whether nobody works on an exchange any more; the first edition's have no process in their name. */
function isOver(tag: string): boolean {
  const [process_, ...rest] = tag.split('-');
  if (rest.length === 0) return true;
  const number = Number(process_);
  return number === process.pid ? !running.has(tag) : !isRunning(number);
}

async function exists(path: string): Promise<boolean> {
  return (await lstat(path).catch(ignoreMissing)) !== undefined;
}

/** Whether something stands there that is not just an empty folder. */
async function isFilled(path: string): Promise<boolean> {
  const found = await stat(path).catch(ignoreMissing);
  if (!found?.isDirectory()) return found !== undefined;
  return (await readdir(path)).length > 0;
}
