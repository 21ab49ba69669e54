import { createHash } from 'node:crypto';
import { lstatSync } from 'node:fs';
import { join } from 'node:path';
import { codeHash, dropOldest, readSealed, writeSealed } from '../../files/index.ts';

/** A file that was written into a site. */
export interface WrittenFile {
  /** A print of all that it was made of; empty if unknown. */
  readonly print: string;
  /** SHA-256 in base64. */
  readonly hash: string;
  /** In bytes. */
  readonly size: number;
}

/** What the last build wrote into an output, as far as it still stands unchanged. */
export interface SiteRecord {
  /** The file at a path, if it was made of the same and is unchanged. */
  standing(path: string, print: string): WrittenFile | undefined;
  /** Files made together of the same, if all are unchanged. */
  standingGroup(print: string): ReadonlyMap<string, WrittenFile> | undefined;
  /** Notes what stands in the output now. */
  save(
    files: ReadonlyMap<string, WrittenFile>,
    groups: ReadonlyMap<string, readonly string[]>,
  ): Promise<void>;
}

/** A file as written, with its stamps in the file system. */
type Entry = readonly [print: string, hash: string, size: number, time: number, inode: number];

interface Content {
  readonly files: Readonly<Record<string, Entry>>;
  readonly groups: Readonly<Record<string, readonly string[]>>;
}

/** Bytes: half a million files. */
const largest = 100_000_000;

const mostOutputs = 50;

/**
 * Opens the record of an output: empty if damaged, or written by another edition of this program. A file counts as
 * unchanged while its size, time and inode are: whoever can forge those can change the output anyway.
 * @param out real path of the output.
 */
export async function openRecord(cache: string, out: string): Promise<SiteRecord> {
  const name = `written-${createHash('sha256').update(out).digest('hex').slice(0, 16)}.json`;
  const sealedFor = `${name} ${await codeHash()}`;
  const read = await readSealed(cache, name, { sealedFor, largest });
  const { files, groups }: Content =
    read === undefined ? { files: {}, groups: {} } : JSON.parse(read.toString('utf8'));
  const known = new Map(Object.entries(files));
  const members = new Map(Object.entries(groups));
  const find = (path: string): WrittenFile | undefined => {
    const entry = known.get(path);
    if (entry === undefined) return undefined;
    const [print, hash, size, time, inode] = entry;
    const found = statOf(join(out, path));
    const isSame = found?.size === size && found.time === time && found.inode === inode;
    return isSame ? { print, hash, size } : undefined;
  };
  return {
    standing(path, print) {
      return known.get(path)?.[0] === print ? find(path) : undefined;
    },
    standingGroup(print) {
      const paths = members.get(print);
      if (paths === undefined) return undefined;
      const group = new Map<string, WrittenFile>();
      for (const path of paths) {
        const file = find(path);
        if (file === undefined) return undefined;
        group.set(path, file);
      }
      return group;
    },
    async save(files, groups) {
      const entries = [...files].flatMap(([path, { print, hash, size }]): [string, Entry][] => {
        const found = statOf(join(out, path));
        return found === undefined ? [] : [[path, [print, hash, size, found.time, found.inode]]];
      });
      const content: Content = {
        files: Object.fromEntries(entries),
        groups: Object.fromEntries(groups),
      };
      await writeSealed(cache, name, { sealedFor, content: JSON.stringify(content) })
        .then(() => dropOldest(cache, 'written-', mostOutputs))
        // An unknown file is written again next time.
        .catch(() => {});
    },
  };
}

/** Stamps of a plain file; nothing for anything else. */
function statOf(path: string) {
  const found = lstatSync(path, { throwIfNoEntry: false });
  if (!found?.isFile()) return undefined;
  return { size: found.size, time: found.mtimeMs, inode: found.ino };
}
