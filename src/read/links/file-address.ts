/**
 * The address of a file, relative to the course folder. Escapes `#`, `?` and `%`, which are ordinary characters in a
 * file name but delimiters in an address (URL standard, 4.3).
 */
export function fileAddress(path: string): string {
  return encodeURI(path).replace(/[?#]/g, encodeURIComponent);
}

/** What an address, or a part of one, names. An address with a stray `%` is taken literally. */
export function decodeAddress(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
