import { UserError } from '../../diagnostics/index.ts';

/** A file as it lies in a ZIP file. */
export interface PackedFile {
  /** CRC-32 of its content. */
  readonly crc: number;
  /** Of its content, in bytes. */
  readonly size: number;
  readonly isDeflated: boolean;
  /** Its content, deflated or as it is. */
  readonly bytes: Uint8Array;
}

/** 1 January 1980, midnight: the first day that a ZIP file can tell. No date of packing goes in. */
const always = { time: 0, date: (1 << 5) | 1 };

/** What may be needed to read the file: version 2.0 of the format, 4.5 where there are very many files. */
const version = { plain: 20, many: 45 };

/** Made on a Unix system (3) by version 6.3 of the format. */
const madeBy = (3 << 8) | 63;

/** Bit 11: names are in UTF-8. */
const flags = 1 << 11;

/** A plain file that its owner can write and everybody can read. */
const attributes = (0o100644 << 16) >>> 0;

const most = { files: 0xffff, bytes: 0xffffffff };

/**
 * Joins packed files to a ZIP file (PKWARE's APPNOTE 6.3): the local header of each with its bytes, the central
 * directory, its end. The same files give the same bytes. The well-kept libraries pack what they are given, so that
 * a file packed by an earlier run would have to be packed again.
 * @throws UserError where a ZIP file without its extensions for size cannot hold them.
 */
export function zipFiles(files: Iterable<readonly [path: string, file: PackedFile]>): Buffer {
  const local: Uint8Array[] = [];
  const central: Uint8Array[] = [];
  let [count, size, directorySize] = [0, 0, 0];
  for (const [path, file] of files) {
    const name = Buffer.from(path);
    const common = commonFields(name, file);
    const ending = Buffer.alloc(14);
    // No comment, on the first disk, no internal attributes.
    ending.writeUInt32LE(attributes, 6);
    ending.writeUInt32LE(size, 10);
    central.push(fields('PK\x01\x02', [madeBy]), common, ending, name);
    directorySize += 46 + name.length;
    local.push(fields('PK\x03\x04', []), common, name, file.bytes);
    size += 30 + name.length + file.bytes.length;
    count += 1;
    if (size + directorySize >= most.bytes) throw tooLarge();
  }
  return Buffer.concat([...local, ...central, endOf({ count, size, directorySize })]);
}

/** What the local header and the central directory say alike: 26 bytes. */
function commonFields(name: Uint8Array, { crc, size, isDeflated, bytes }: PackedFile): Buffer {
  if (size >= most.bytes) throw tooLarge();
  const common = Buffer.alloc(26);
  common.writeUInt16LE(version.plain, 0);
  common.writeUInt16LE(flags, 2);
  common.writeUInt16LE(isDeflated ? 8 : 0, 4);
  common.writeUInt16LE(always.time, 6);
  common.writeUInt16LE(always.date, 8);
  common.writeUInt32LE(crc, 10);
  common.writeUInt32LE(bytes.length, 14);
  common.writeUInt32LE(size, 18);
  common.writeUInt16LE(name.length, 22);
  return common;
}

interface Directory {
  readonly count: number;
  /** Where it begins. */
  readonly size: number;
  readonly directorySize: number;
}

/** The end of the central directory; before it stands the count of very many files. */
function endOf({ count, size, directorySize }: Directory): Buffer {
  const shownCount = Math.min(count, most.files);
  const end = fields('PK\x05\x06', [0, 0, shownCount, shownCount], [directorySize, size], [0]);
  if (count < most.files) return end;
  const record = Buffer.alloc(52);
  record.writeBigUInt64LE(44n, 0);
  record.writeUInt16LE(madeBy, 8);
  record.writeUInt16LE(version.many, 10);
  const counts = [count, count, directorySize, size];
  for (const [at, value] of counts.entries()) record.writeBigUInt64LE(BigInt(value), 20 + 8 * at);
  const locator = fields('PK\x06\x07', [], [0, size + directorySize, 0, 1]);
  return Buffer.concat([fields('PK\x06\x06', []), record, locator, end]);
}

/** A signature, numbers of two bytes, numbers of four, numbers of two. */
function fields(
  signature: string,
  shorts: readonly number[],
  longs: readonly number[] = [],
  last: readonly number[] = [],
): Buffer {
  const made = Buffer.alloc(4 + 2 * (shorts.length + last.length) + 4 * longs.length);
  let at = made.write(signature, 'latin1');
  for (const value of shorts) at = made.writeUInt16LE(value, at);
  for (const value of longs) at = made.writeUInt32LE(value, at);
  for (const value of last) at = made.writeUInt16LE(value, at);
  return made;
}

function tooLarge(): UserError {
  return new UserError(
    'the e-book would be larger than 4 GB, which no e-reader takes',
    'make the pictures in media/ smaller',
  );
}
