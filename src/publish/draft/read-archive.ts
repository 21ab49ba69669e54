import { createReadStream } from 'node:fs';
import { decodeGame, utf8Chunks } from '../../movetext/index.ts';

/** Whole games of a PGN file, some at a time. */
export interface ArchivePart {
  readonly text: string;
  /** The line of the file that it begins in, from 1. */
  readonly line: number;
}

export interface ArchiveOptions {
  /** So many bytes are gathered before a part is given out; default 4 million. */
  readonly size?: number;
}

/** A game begins behind a blank line, with the first tag of the seven (PGN standard, 8.1.1). */
const gameStart = /(?:\r\n?|\n)[ \t]*(?:\r\n?|\n)(?=\[Event[ \t]+")/g;

/**
 * Reads a PGN file of any size in parts, once, so that a pipe will do. Games that are not UTF-8 are
 * read as ISO 8859-1, which section 4.1 of the PGN standard asks for, and a file in UTF-16 as such.
 */
export async function* readArchive(
  file: string,
  { size = 4_000_000 }: ArchiveOptions = {},
): AsyncGenerator<ArchivePart> {
  let bytes: Buffer = Buffer.alloc(0);
  let line = 1;
  const part = (games: Buffer, starts: readonly number[]) => {
    const text = decodeEach(games, starts);
    const first = line;
    line += countLines(text);
    return { text, line: first };
  };
  for await (const chunk of utf8Chunks(createReadStream(file, { highWaterMark: 1 << 18 }))) {
    bytes = Buffer.concat([bytes, chunk]);
    if (bytes.length < size) continue;
    const starts = startsOf(bytes);
    const end = starts.pop();
    if (end === undefined) continue;
    yield part(bytes.subarray(0, end), starts);
    bytes = bytes.subarray(end);
  }
  const rest = part(bytes, startsOf(bytes));
  if (rest.text.trim() !== '') yield rest;
}

/** Where games begin behind others. A byte is a sign here, and all that counts is ASCII. */
function startsOf(bytes: Buffer): number[] {
  const text = bytes.toString('latin1');
  return [...text.matchAll(gameStart)].map((match) => match.index + match[0].length);
}

function decodeEach(bytes: Buffer, starts: readonly number[]): string {
  const ends = [...starts, bytes.length];
  return [0, ...starts]
    .map((from, index) => decodeGame(bytes.subarray(from, ends[index])))
    .join('');
}

/** Line breaks in a text, of any kind. */
export function countLines(text: string): number {
  return text.match(/\r\n?|\n/g)?.length ?? 0;
}
