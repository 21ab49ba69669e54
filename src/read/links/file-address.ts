/**
 * The address of a file of the course, relative to its folder. In a name `#`, `?` and `%` are letters
 * like others; in an address they begin something else (URL standard, 4.3).
 */
export function fileAddress(path: string): string {
  return encodeURI(path).replace(/[?#]/g, encodeURIComponent);
}

/** What an address or a part of it names; with a stray `%` it is taken as it stands. */
export function decodeAddress(address: string): string {
  try {
    return decodeURIComponent(address);
  } catch {
    return address;
  }
}
