/**
 * What a text may not do where it is shown: act on a terminal (the controls C0, DEL and C1), break a
 * line (those, and U+2028 and U+2029), or set words in another order than they stand in (the
 * embeddings, overrides and isolates of the Unicode Bidirectional Algorithm, UAX #9, table 4).
 */
const acting = /[\p{Cc}\u2028\u2029\u202a-\u202e\u2066-\u2069]/gu;

/** Line ends among these have a sign of their own in the block of control pictures. */
const newLine = '\u2424';

/**
 * Text that comes from a file, an argument or another program, as one line to be shown: each sign
 * that would act is shown instead. The length in UTF-16 units stays, so that carets below still fit.
 * Every report and all that the commands print goes through here.
 */
export function printable(text: string): string {
  return text.replace(acting, signOf);
}

/** The same for text of several lines, which end with LF or CR LF. */
export function printableLines(text: string): string {
  return text
    .replace(/\r\n/g, '\n')
    .replace(acting, (sign) => (sign === '\n' ? sign : signOf(sign)));
}

/**
 * JSON that can be shown as well: the same signs are written as escapes (RFC 8259, section 7). They
 * can stand in strings only, but for the line ends of the indentation.
 */
export function writeJson(value: unknown): string {
  return `${JSON.stringify(value, undefined, 2).replace(acting, escapeInJson)}\n`;
}

/** The same on one line and without its end, for lists too long to be put together in memory. */
export function writeJsonLine(value: unknown): string {
  return JSON.stringify(value).replace(acting, escapeInJson);
}

function escapeInJson(sign: string): string {
  return sign === '\n' ? sign : `\\u${sign.charCodeAt(0).toString(16).padStart(4, '0')}`;
}

/** A control picture (U+2400 to U+2424) where Unicode has one, else the replacement character. */
function signOf(sign: string): string {
  const code = sign.charCodeAt(0);
  if (sign === '\t') return ' ';
  if (code < 0x20) return String.fromCharCode(0x2400 + code);
  if (code === 0x7f) return '\u2421';
  return code === 0x85 || code === 0x2028 || code === 0x2029 ? newLine : '\ufffd';
}
