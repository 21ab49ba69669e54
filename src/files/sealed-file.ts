import path from 'node:path';
import { readPlainFile } from './read-plain-file.ts';
import { replaceFile } from './replace-file.ts';
import { sealOf } from './seal.ts';

/**
 * What `writeSealed` put into a file of a cache; undefined where there is none, it is damaged, or it was
 * sealed for something else or with another key.
 * @param file its name in the folder.
 * @param sealedFor what the content depends on, the name of the file included.
 * @param largest in bytes: what is larger is none.
 */
export async function readSealed(
  folder: string,
  file: string,
  { sealedFor, largest }: { readonly sealedFor: string; readonly largest: number },
): Promise<Buffer | undefined> {
  const read = await readPlainFile(folder, file, largest).catch(() => undefined);
  if (read === undefined) return undefined;
  const { buffer, byteOffset, byteLength } = read.bytes;
  return unsealed(Buffer.from(buffer, byteOffset, byteLength), sealedFor);
}

/** What a file of a cache holds behind its seal; undefined where that is not whole, or was made for something else. */
export function unsealed(whole: Buffer, sealedFor: string): Buffer | undefined {
  const end = whole.indexOf('\n');
  const content = whole.subarray(end + 1);
  return whole.toString('latin1', 0, end) === sealLine(sealedFor, content) ? content : undefined;
}

/**
 * Keeps something in a cache, in a line of its seal and the content. Runs at the same time each leave a whole
 * file. What is large comes in pieces, of which there is never a copy in one.
 * @throws where it cannot be written, which costs the caller time, nothing else.
 */
export async function writeSealed(
  folder: string,
  file: string,
  {
    sealedFor,
    content,
  }: { readonly sealedFor: string; readonly content: string | Uint8Array | readonly Uint8Array[] },
): Promise<void> {
  const pieces =
    typeof content === 'string'
      ? [Buffer.from(content)]
      : content instanceof Uint8Array
        ? [content]
        : content;
  const seal = Buffer.from(`${sealLine(sealedFor, pieces)}\n`);
  await replaceFile(path.join(folder, file), inBlocks([seal, ...pieces]));
}

/** In bytes: a call to the system for each of many small pieces would cost more than to copy them; a large one is not copied. */
const blockSize = 1_000_000;

function* inBlocks(pieces: Iterable<Uint8Array>): Generator<Uint8Array> {
  let block: Uint8Array[] = [];
  let size = 0;
  for (const piece of pieces) {
    const isLarge = piece.length >= blockSize;
    if (!isLarge) {
      block.push(piece);
      size += piece.length;
    }
    if (size >= blockSize || (isLarge && size > 0)) {
      yield Buffer.concat(block);
      block = [];
      size = 0;
    }
    if (isLarge) yield piece;
  }
  if (size > 0) yield Buffer.concat(block);
}

function sealLine(sealedFor: string, content: Uint8Array | Iterable<Uint8Array>): string {
  return sealOf(sealedFor, content).toString('hex');
}
