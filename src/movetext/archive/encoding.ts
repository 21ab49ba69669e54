/** Encodings of text files: how to tell UTF-16, and the text of PGN games in whatever they are. */

export type Utf16 = 'utf-16le' | 'utf-16be';

/** So many bytes tell the encoding of a file. */
export const headLength = 1024;

/**
 * Which UTF-16 the beginning of a file is in, if it is in any: by its byte order mark, else by
 * where the zero bytes lie, since most signs of a chapter or a game are ASCII.
 */
export function utf16Of(head: Uint8Array): Utf16 | undefined {
  const [first, second, third, fourth] = head;
  // The mark of UTF-32 begins as that of UTF-16.
  if (first === 0xff && second === 0xfe && (third || fourth || head.length < 4)) return 'utf-16le';
  if (first === 0xfe && second === 0xff) return 'utf-16be';
  const units = Math.min(head.length, headLength) >> 1;
  let [even, odd] = [0, 0];
  for (let at = 0; at < 2 * units; at += 2) {
    if (head[at] === 0) even++;
    if (head[at + 1] === 0) odd++;
  }
  const most = Math.max(even, odd);
  if (most < Math.max(2, units / 8) || Math.min(even, odd) > most / 8) return undefined;
  return even < odd ? 'utf-16le' : 'utf-16be';
}

const utf8 = new TextDecoder('utf-8', { fatal: true });
/** Latin-1 as browsers and Windows understand it: with quotes and dashes where Latin-1 has controls. */
const latin1 = new TextDecoder('windows-1252');

/**
 * The text of a game: UTF-8, else Latin-1, the PGN standard's own set (section 4.1). Judged game by
 * game, since files are often put together from several.
 */
export function decodeGame(bytes: Uint8Array): string {
  return decodeKnown(bytes).text;
}

/** The same, and whether it has signs of Windows-1252 where Latin-1 has controls (80 to 9F). */
export function decodeKnown(bytes: Uint8Array): { text: string; isWindows: boolean } {
  try {
    return { text: utf8.decode(bytes), isWindows: false };
  } catch {
    const isWindows = bytes.some((byte) => byte >= 0x80 && byte <= 0x9f);
    return { text: latin1.decode(bytes), isWindows };
  }
}

export interface Utf8Stream {
  readonly push: (chunk: Uint8Array) => Uint8Array;
  /** What was held back. */
  readonly end: () => Uint8Array;
}

/** A PGN file as it comes; one in UTF-16 becomes UTF-8, all others stay as they are. */
export function createUtf8Stream(): Utf8Stream {
  const encoder = new TextEncoder();
  /** The first bytes, until there are enough to tell the encoding. */
  let head: Uint8Array | undefined = new Uint8Array(0);
  let decoder: TextDecoder | undefined;
  const passed = (bytes: Uint8Array) =>
    decoder ? encoder.encode(decoder.decode(bytes, { stream: true })) : bytes;
  const begin = (bytes: Uint8Array) => {
    head = undefined;
    const found = utf16Of(bytes);
    decoder = found && new TextDecoder(found);
    return passed(bytes);
  };
  return {
    push: (chunk) => {
      if (head === undefined) return passed(chunk);
      head = joined(head, chunk);
      return head.length < headLength ? new Uint8Array(0) : begin(head);
    },
    end: () => {
      const rest = head === undefined ? new Uint8Array(0) : begin(head);
      // Half a sign at the end of a file that was cut short.
      return decoder ? joined(rest, encoder.encode(decoder.decode())) : rest;
    },
  };
}

function joined(a: Uint8Array, b: Uint8Array): Uint8Array {
  const both = new Uint8Array(a.length + b.length);
  both.set(a);
  both.set(b, a.length);
  return both;
}
