/**
 * What an address must be for a site to be published at, where a text is no such address: to follow
 * “must be”. The paths of pages and pictures are added to it, and it stands on every page.
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
