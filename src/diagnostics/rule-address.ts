/**
 * Where a published handbook tells of a rule.
 * @param handbook the address that it is published at, which ends with `/`.
 */
export function ruleAddress(handbook: string, rule: string): string {
  return new URL(`rules.html#${encodeURIComponent(rule)}`, handbook).href;
}
