/**
 * What a site's address must be, to follow “must be” in a message; undefined for a good address. The paths of pages
 * and pictures are appended to it, and every page contains it.
 */
export function webAddressFault(address: string): string | undefined {
  if (!/^https?:\/\/[^/]/.test(address)) return 'a web address that begins with `https://`';
  if (/[\s"'<>\\^`{|}]/.test(address)) {
    return 'a web address without spaces, quotes, brackets and backslashes';
  }
  if (!URL.canParse(address)) return 'a web address that begins with `https://`';
  if (/[?#]/.test(address)) return 'a web address that ends with its path, without `?` and `#`';
  if (/^https?:\/\/[^/]*@/.test(address)) {
    return 'a web address without a name and a password: everybody would read them';
  }
  return undefined;
}
