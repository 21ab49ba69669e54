import { createReadStream } from 'node:fs';

/** Whole games of a PGN file, some at a time. */
export interface ArchivePart {
  readonly text: string;
  /** The line of the file that it begins in, from 1. */
  readonly line: number;
}

export interface ArchiveOptions {
  /** So many UTF-16 units are gathered before a part is given out; default 4 million. */
  readonly size?: number;
}

/** A game begins behind a blank line, with the first tag of the seven (PGN standard, 8.1.1). */
const gameStart = /(?:\r\n?|\n)[ \t]*(?:\r\n?|\n)(?=\[Event[ \t]+")/g;

/**
 * Reads a PGN file of any size in parts. Text that is not UTF-8 is read as ISO 8859-1, which
 * section 4.1 of the PGN standard asks for; a byte order mark is dropped.
 */
export async function* readArchive(
  file: string,
  { size = 4_000_000 }: ArchiveOptions = {},
): AsyncGenerator<ArchivePart> {
  const decoder = new TextDecoder((await isUtf8(file)) ? 'utf-8' : 'latin1');
  let text = '';
  let line = 1;
  for await (const bytes of createReadStream(file, { highWaterMark: 1 << 18 })) {
    text += decoder.decode(bytes as Buffer, { stream: true });
    if (text.length < size) continue;
    const end = lastGame(text);
    if (end === 0) continue;
    const part = text.slice(0, end);
    yield { text: part, line };
    line += countLines(part);
    text = text.slice(end);
  }
  text += decoder.decode();
  if (text.trim() !== '') yield { text, line };
}

function lastGame(text: string): number {
  let end = 0;
  for (const match of text.matchAll(gameStart)) end = match.index + match[0].length;
  return end;
}

/** Line breaks in a text, of any kind. */
export function countLines(text: string): number {
  return text.match(/\r\n?|\n/g)?.length ?? 0;
}

async function isUtf8(file: string): Promise<boolean> {
  const decoder = new TextDecoder('utf-8', { fatal: true });
  try {
    for await (const bytes of createReadStream(file, { highWaterMark: 1 << 18 })) {
      decoder.decode(bytes as Buffer, { stream: true });
    }
    decoder.decode();
    return true;
  } catch (error) {
    if (error instanceof TypeError) return false;
    throw error;
  }
}
