import { createHash } from 'node:crypto';
import { mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { SiteRecord, WrittenFile } from './site-record.ts';

/** Writes the files of a site while the next ones are being made, and leaves what the last build wrote of the same. */
export interface SiteWriter {
  /**
   * Whether the output has a file that was made of the same: then it need not be made again.
   * @param path relative to the site, with `/`.
   * @param print of all that it is made of.
   */
  keeps(path: string, print: string): boolean;
  /** The same of files that are made together; how many there are, where each of them is kept. */
  keepsGroup(print: string): number | undefined;
  /**
   * Begins to write a file; settles as soon as there is room for another one.
   * @throws what went wrong with this file or with an earlier one.
   */
  write(path: string, content: string | Uint8Array, print?: string): Promise<void>;
  /** Says which files were made together. */
  group(print: string, paths: readonly string[]): void;
  /** Settles when all files are written. */
  finish(): Promise<void>;
  /** All that was written or kept, by path. */
  readonly files: ReadonlyMap<string, WrittenFile>;
  /** The paths of what is kept, which the folder of the new site lacks. */
  readonly kept: ReadonlySet<string>;
  readonly groups: ReadonlyMap<string, readonly string[]>;
}

/** More than the threads that Node writes with, so that none of them waits. */
const mostAtOnce = 16;

export function siteWriter(folder: string, record?: SiteRecord): SiteWriter {
  const made = new Map<string, Promise<unknown>>();
  const running = new Set<Promise<void>>();
  const files = new Map<string, WrittenFile>();
  const groups = new Map<string, readonly string[]>();
  const kept = new Set<string>();
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
  const keep = (path: string, file: WrittenFile): void => {
    files.set(path, file);
    kept.add(path);
  };

  return {
    files,
    kept,
    groups,
    keeps(path, print) {
      const file = record?.standing(path, print);
      if (file !== undefined) keep(path, file);
      return file !== undefined;
    },
    keepsGroup(print) {
      const group = record?.standingGroup(print);
      for (const [path, file] of group ?? []) keep(path, file);
      if (group !== undefined) groups.set(print, [...group.keys()]);
      return group?.size;
    },
    group(print, paths) {
      groups.set(print, paths);
    },
    async write(path, content, print = '') {
      failIfAny();
      const bytes = typeof content === 'string' ? Buffer.from(content) : content;
      const hash = createHash('sha256').update(bytes).digest('base64');
      files.set(path, { print, hash, size: bytes.length });
      const writing: Promise<void> = put(path, bytes)
        .catch((error: unknown) => {
          fault ??= { error };
        })
        .finally(() => running.delete(writing));
      running.add(writing);
      // Pages and pictures are written at the same time: where one file makes room, both wake up.
      while (running.size >= mostAtOnce) await Promise.race(running);
      failIfAny();
    },
    async finish() {
      await Promise.all(running);
      failIfAny();
    },
  };
}

/** A part of a site in a folder of its own, as a site that is written there. */
export function writerBelow(writer: SiteWriter, folder: string): SiteWriter {
  const before = `${folder}/`;
  const below = <Value>(all: Iterable<readonly [string, Value]>) =>
    new Map(
      [...all].flatMap(([path, value]) =>
        path.startsWith(before) ? [[path.slice(before.length), value] as const] : [],
      ),
    );
  return {
    get files() {
      return below(writer.files);
    },
    get kept() {
      return new Set(below([...writer.kept].map((path) => [path, path] as const)).keys());
    },
    get groups() {
      return below(writer.groups);
    },
    keeps: (path, print) => writer.keeps(before + path, print),
    keepsGroup: (print) => writer.keepsGroup(before + print),
    write: (path, content, print) => writer.write(before + path, content, print),
    group(print, paths) {
      writer.group(
        before + print,
        paths.map((path) => before + path),
      );
    },
    finish: () => writer.finish(),
  };
}
