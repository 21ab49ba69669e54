/** What stands at a place of a PGN file, told from its bytes: every sign that counts is ASCII. */
export const [lf, cr, percent, open, close] = [10, 13, 37, 40, 41];
export const [semicolon, bracket, brace, closingBrace] = [59, 91, 123, 125];
export const [quote, closingBracket] = [34, 93];
const backslash = 92;

/** The tag pair that begins at an offset: its name, and where it ends, if on this line. */
export function tagAt(
  bytes: Uint8Array,
  from: number,
  to: number,
): { name: string; end: number } | undefined {
  if (bytes[from] !== bracket) return undefined;
  const { name, end } = tagNameAt(bytes, from, to);
  if (name === '' || end === to || bytes[end] !== quote) return undefined;
  return { name, end: tagValueEnd(bytes, end, to) };
}

/** The name behind the bracket of a tag, and where what follows it stands. */
export function tagNameAt(
  bytes: Uint8Array,
  from: number,
  to: number,
): { name: string; end: number } {
  let at = from + 1;
  while (at < to && isBlank(bytes[at] ?? 0)) at++;
  const nameStart = at;
  while (at < to && isTagNameByte(bytes[at] ?? 0)) at++;
  let name = '';
  for (let next = nameStart; next < Math.min(at, nameStart + 255); next++) {
    name += String.fromCharCode(bytes[next] ?? 0);
  }
  while (at < to && isBlank(bytes[at] ?? 0)) at++;
  return { name, end: at };
}

/** The end of the tag whose value begins with the quote at an offset; the end of the line if it is open. */
export function tagValueEnd(bytes: Uint8Array, from: number, to: number): number {
  for (let at = from + 1; at < to; at++) {
    if (bytes[at] === backslash) at++;
    else if (bytes[at] === quote) {
      let after = at + 1;
      while (after < to && isBlank(bytes[after] ?? 0)) after++;
      return bytes[after] === closingBracket && after < to ? after + 1 : to;
    }
  }
  return to;
}

/** Names have letters, digits and underscores; a hyphen or an é in one is told later (8.1.1). */
function isTagNameByte(byte: number): boolean {
  return isNameByte(byte) || byte === 45 || byte >= 0x80;
}

/** Whether a line begins with the number of the first move, and not with a result. */
export function isMoveOne(bytes: Uint8Array, from: number, to: number): boolean {
  if (bytes[from] !== 49) return false;
  const next = from + 1 < to ? bytes[from + 1] : undefined;
  return next === undefined || next === 46 || isBlank(next);
}

const results = ['1-0', '0-1', '1/2-1/2', '1/2', '*', '½-½', '½'].flatMap((result) => [
  new TextEncoder().encode(result),
  Uint8Array.from(result, (sign) => sign.charCodeAt(0)),
]);

/** By their first byte. */
const resultsFrom = Array.from({ length: 256 }, (_, byte) =>
  results.filter(([first]) => first === byte),
);

/** What a byte of movetext may be: itself for a bracket or the like. */
export const [ordinary, blank] = [1, 32];
const resultStart = 42;
export const roles = Uint8Array.from({ length: 256 }, (_, byte) => {
  if (isBlank(byte)) return blank;
  if ([brace, semicolon, open, close].includes(byte)) return byte;
  return resultsFrom[byte]?.length ? resultStart : ordinary;
});

/** The length of the result that stands at an offset, if one does. */
export function resultAt(bytes: Uint8Array, at: number, to: number): number {
  const first = bytes[at] ?? 0;
  for (const result of resultsFrom[first] ?? []) {
    // Most often the number of a move stands there.
    if (result.length > 1 && result[1] !== bytes[at + 1]) continue;
    if (at + result.length > to) continue;
    if (!result.every((byte, index) => bytes[at + index] === byte)) continue;
    const next = at + result.length < to ? (bytes[at + result.length] ?? 0) : 32;
    if (first === 42 || !(isNameByte(next) || next === 47 || next >= 0x80)) return result.length;
  }
  return 0;
}

export function isWordStart(bytes: Uint8Array, at: number, from: number): boolean {
  if (at === from) return true;
  const before = bytes[at - 1] ?? 32;
  return !isNameByte(before) && before !== 47 && before !== 45 && before < 0x80;
}

export function hasInk(bytes: Uint8Array, from: number, to: number): boolean {
  for (let at = from; at < to; at++) if (!isSpace(bytes[at] ?? 32)) return true;
  return false;
}

/** Space within a line, and the bytes of a byte order mark. */
export function isBlank(byte: number): boolean {
  return byte === 32 || (byte >= 9 && byte <= 12 && byte !== lf) || isMark(byte);
}

function isMark(byte: number): boolean {
  return byte === 0xef || byte === 0xbb || byte === 0xbf;
}

function isSpace(byte: number): boolean {
  return isBlank(byte) || byte === lf || byte === cr;
}

function isNameByte(byte: number): boolean {
  return (
    (byte >= 97 && byte <= 122) ||
    (byte >= 65 && byte <= 90) ||
    (byte >= 48 && byte <= 57) ||
    byte === 95
  );
}
