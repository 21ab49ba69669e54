/**
 * Where a published handbook tells of a rule.
 * @param handbook the address that it is published at, which ends with `/`.
 */
export function ruleAddress(handbook: string, rule: string): string {
  return new URL(`rules.html#${encodeURIComponent(rule)}`, handbook).href;
}

/** The address of a published handbook as rules' addresses start with it; undefined for what is no address. */
export function readHandbookAddress(named: string): string | undefined {
  // A handbook that lies on a disk is one, too.
  if (!URL.canParse(named) || !/^(?:https?|file):$/.test(new URL(named).protocol)) return undefined;
  const address = new URL(named);
  address.hash = '';
  address.search = '';
  address.pathname = address.pathname.replace(/(?:\/index\.html|\/*)$/, '/');
  return address.href;
}
