/**
 * What stands before words that wait for their translator, by the language of the original: `(en) ` before the
 * original's own words, `(en changed) ` before words whose original has changed. A mark is text wherever text may
 * stand: in comments, in YAML, in titles.
 */
export function languageTag(source: string): { readonly open: string; readonly changed: string } {
  return { open: `(${source}) `, changed: `(${source} changed) ` };
}
