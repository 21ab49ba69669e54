import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';

/** Writes the files of a site while the next ones are being made. */
export interface SiteWriter {
  /**
   * Begins to write a file; settles as soon as there is room for another one.
   * @param path relative to the site, with `/`.
   * @throws what went wrong with this file or with an earlier one.
   */
  write(path: string, content: string | Uint8Array): Promise<void>;
  /** Settles when all files are written. */
  finish(): Promise<void>;
}

/** More than the threads that Node writes with, so that none of them waits. */
const mostAtOnce = 16;

export function siteWriter(folder: string): SiteWriter {
  const made = new Map<string, Promise<unknown>>();
  const running = new Set<Promise<void>>();
  let fault: { readonly error: unknown } | undefined;

  const put = async (path: string, content: string | Uint8Array): Promise<void> => {
    const parent = dirname(join(folder, path));
    const ready = made.get(parent) ?? mkdir(parent, { recursive: true });
    made.set(parent, ready);
    await ready;
    await writeFile(join(folder, path), content);
  };
  const failIfAny = () => {
    if (fault !== undefined) throw fault.error;
  };

  return {
    async write(path, content) {
      failIfAny();
      const writing: Promise<void> = put(path, content)
        .catch((error: unknown) => {
          fault ??= { error };
        })
        .finally(() => running.delete(writing));
      running.add(writing);
      if (running.size >= mostAtOnce) await Promise.race(running);
      failIfAny();
    },
    async finish() {
      await Promise.all(running);
      failIfAny();
    },
  };
}
