/** A title in two lines: what stands before its first colon, and behind it. */
export interface SplitTitle {
  readonly shortTitle: string;
  readonly subtitle?: string;
}

/** `The Tarrasch Defence: a Black answer to 1.d4` is a title with a subtitle, as on the cover of a book. */
export function splitTitle(title: string): SplitTitle {
  const [, shortTitle, subtitle] = /^(.*?\S)\s*[::]\s+(\S.*)$/su.exec(title) ?? [];
  if (shortTitle === undefined || subtitle === undefined) return { shortTitle: title };
  return { shortTitle, subtitle };
}
