import { closeSync, fstatSync, openSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { crc32 } from 'node:zlib';
import { dropOldest } from './drop-oldest.ts';
import { plainFlags } from './open-plain-file.ts';
import { unsealed, writeSealed } from './sealed-file.ts';
import { inMemory, openSpill, type SpilledBytes } from './spill.ts';

/** Lines of bytes that are kept in a cache by their names, such as one of each chapter. */
export interface LineStore {
  /**
   * What is kept by a name; reads no more of the store than it must.
   * @param start, end offsets of the bytes that are wanted; default: all.
   */
  get(name: string, start?: number, end?: number): Buffer | undefined;
  /**
   * @param line has no line break. It is put aside on the disk until its file is written; as a function it is made then,
   *   so that in either way not all lie in memory at once.
   */
  set(name: string, line: Line): void;
  /**
   * Writes what was set; a cache that cannot be written costs time, nothing else.
   * @param names those of which anything is still to be kept.
   */
  save(names: ReadonlySet<string>): Promise<void>;
}

export type Line = Uint8Array | (() => Uint8Array);

/** A line on the disk, in memory, or still to be made. */
type HeldLine = SpilledBytes | (() => Uint8Array);

export interface LineStoreOptions {
  /** What all lines depend on, such as a hash of the program. */
  readonly sealedFor: string;
  /** How many such stores, with names that begin alike up to the first hyphen, are kept. */
  readonly mostStores: number;
}

/** So many files share the lines, so that one that changes costs a small one. */
const shelves = 64;

/** In bytes, of one file: the lines of ten thousand long chapters. */
const largest = 1_000_000_000;

const lineEnd = 0x0a;

/**
 * Opens the lines that an earlier run has kept in a folder of a cache; none where they are damaged or were kept for
 * something else.
 */
export function openLineStore(
  cache: string,
  name: string,
  { sealedFor, mostStores }: LineStoreOptions,
): LineStore {
  const folder = `${name}.lines`;
  const loaded = new Map<number, Map<string, HeldLine>>();
  const changed = new Set<number>();
  const spill = openSpill(cache);
  const fileOf = (shelf: number) => `${folder}/${String(shelf).padStart(2, '0')}`;
  const sealOf = (shelf: number) => `${fileOf(shelf)} ${sealedFor}`;
  const shelfOf = (shelf: number): Map<string, HeldLine> => {
    const known = loaded.get(shelf) ?? readShelf(path.join(cache, fileOf(shelf)), sealOf(shelf));
    loaded.set(shelf, known);
    return known;
  };
  return {
    get(name, start, end) {
      const held = shelfOf(shelfFor(name)).get(name);
      if (held === undefined) return undefined;
      const line = bytesOf(held);
      return line.read(start ?? 0, end ?? line.length);
    },
    set(name, line) {
      const shelf = shelfFor(name);
      shelfOf(shelf).set(name, typeof line === 'function' ? line : spill.put(line));
      changed.add(shelf);
    },
    async save(names) {
      if (changed.size === 0) return;
      try {
        const join = joiner();
        for (const shelf of changed) {
          const content = join([...shelfOf(shelf)].filter(([name]) => names.has(name)));
          await writeSealed(cache, fileOf(shelf), { sealedFor: sealOf(shelf), content });
          // Whoever asks again reads it again.
          loaded.delete(shelf);
        }
        changed.clear();
        spill.close();
        await dropOldest(cache, name.slice(0, name.indexOf('-') + 1), mostStores);
      } catch {
        // What cannot be kept is made again next time.
      }
    },
  };
}

function bytesOf(line: HeldLine): SpilledBytes {
  return typeof line === 'function' ? inMemory(line()) : line;
}

/**
 * Joins the lines of one shelf after the other in the same memory: the system would have to clear new memory for each, and
 * V8 collects garbage for what waits to be freed. What it gives is good until the next.
 */
function joiner(): (lines: readonly (readonly [name: string, line: HeldLine])[]) => Buffer {
  let room = Buffer.alloc(0);
  return (lines) => {
    const named = lines.map(
      ([name, line]) => [Buffer.from(`${JSON.stringify(name)}\t`), bytesOf(line)] as const,
    );
    const size = named.reduce((sum, [name, line]) => sum + name.length + line.length + 1, 0);
    if (room.length < size) room = Buffer.allocUnsafeSlow(size);
    let end = 0;
    for (const [name, line] of named) {
      end += name.copy(room, end);
      line.copy(room, end);
      end = room.writeUInt8(lineEnd, end + line.length);
    }
    return room.subarray(0, size);
  };
}

function shelfFor(name: string): number {
  return crc32(name) % shelves;
}

function readShelf(file: string, sealedFor: string): Map<string, HeldLine> {
  const lines = new Map<string, HeldLine>();
  const content = unsealed(readPlain(file), sealedFor);
  if (content === undefined) return lines;
  for (let start = 0; start < content.length; ) {
    const end = content.indexOf(lineEnd, start);
    const tab = content.indexOf(0x09, start);
    const name = JSON.parse(content.toString('utf8', start, tab));
    lines.set(name, inMemory(content.subarray(tab + 1, end)));
    start = end + 1;
  }
  return lines;
}

/** Nothing that is missing, too large or no plain file. */
function readPlain(file: string): Buffer {
  let handle: number | undefined;
  try {
    handle = openSync(file, plainFlags);
    const found = fstatSync(handle);
    return found.isFile() && found.size <= largest ? readFileSync(handle) : Buffer.alloc(0);
  } catch {
    return Buffer.alloc(0);
  } finally {
    if (handle !== undefined) closeSync(handle);
  }
}
