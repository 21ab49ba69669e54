import path from 'node:path';
import { codeHash, dropOldest, readSealed, writeSealed } from '../../files/index.ts';
import type { PackedFile, PackedFiles } from '../../publish/book/index.ts';
import { printPart } from '../../render/index.ts';

/** Bytes: more than a book with all its pictures. */
const largest = 500_000_000;

const mostCourses = 20;

/** The packed files of a course's book, most of them of an earlier build. */
export interface KeptPacked extends PackedFiles {
  /** Keeps those that were asked for or set; writes nothing if nothing has changed. */
  save(): Promise<void>;
}

/** A file, in the line above the bytes of all. */
type Entry = readonly [key: string, crc: number, size: number, isDeflated: boolean, length: number];

/**
 * Opens the files of a course's book as an earlier build packed them; none if damaged, or packed by another edition of
 * this program or of its compressor.
 * @param cache folder of the user's cache.
 */
export async function openPacked(cache: string, folder: string): Promise<KeptPacked> {
  const course = printPart(path.resolve(folder));
  const name = `packed-${course}`;
  const sealedFor = `${name} ${await codeHash()} ${process.versions.zlib}`;
  const before = readEntries(await readSealed(cache, name, { sealedFor, largest }));
  const now = new Map<string, PackedFile>();
  return {
    get(key) {
      const file = now.get(key) ?? before.get(key);
      if (file !== undefined) now.set(key, file);
      return file;
    },
    set(key, file) {
      now.set(key, file);
    },
    async save() {
      // Nobody asks if the book was left as it is.
      if (now.size === 0) return;
      if (now.size === before.size && [...now.keys()].every((key) => before.has(key))) return;
      const files = [...now];
      const entries = files.map(([key, { crc, size, isDeflated, bytes }]): Entry => {
        return [key, crc, size, isDeflated, bytes.length];
      });
      const content = [
        Buffer.from(`${JSON.stringify(entries)}\n`),
        ...files.map(([, { bytes }]) => bytes),
      ];
      await writeSealed(cache, name, { sealedFor, content })
        .then(() => dropOldest(cache, 'packed-', mostCourses))
        // What could not be kept is packed again next time.
        .catch(() => {});
    },
  };
}

function readEntries(content: Buffer | undefined): ReadonlyMap<string, PackedFile> {
  const files = new Map<string, PackedFile>();
  if (content === undefined) return files;
  const end = content.indexOf('\n');
  let at = end + 1;
  for (const entry of JSON.parse(content.toString('utf8', 0, end)) as Entry[]) {
    const [key, crc, size, isDeflated, length] = entry;
    files.set(key, { crc, size, isDeflated, bytes: content.subarray(at, at + length) });
    at += length;
  }
  return files;
}
