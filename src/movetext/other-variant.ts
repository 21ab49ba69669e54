/** What the `Variant` tag says of the game that everybody plays; the tag is common practice, no source. */
const ordinary = /^\s*(?:\?|-|standard|chess|normal|classical|from position)?\s*$/i;

/** Whether a `Variant` tag names another game than chess: its moves are no moves of chess. */
export function isOtherVariant(tag: string): boolean {
  return !ordinary.test(tag);
}
