/**
 * Whether a text is of the site's fallback language, English, on a page whose own language is written in
 * other letters. Moves and squares count as neither, and what stands in quotation marks is a title of the
 * course within a sentence of the site. Undefined: it has no words.
 */
export function isFallback(text: string): boolean | undefined {
  const { latin, other } = letters(text.replace(/“[^”]*”/gu, ' '));
  if (latin + other > 0) return latin >= other;
  const quoted = letters(text);
  return quoted.latin + quoted.other === 0 ? undefined : quoted.latin >= quoted.other;
}

function letters(text: string): { latin: number; other: number } {
  let latin = 0;
  let other = 0;
  for (const [word] of text.matchAll(/[\p{L}\p{M}\p{N}’'-]+/gu)) {
    const foreign = word.match(/\p{Script=Latin}/gu)?.length ?? 0;
    other += (word.match(/\p{L}/gu)?.length ?? 0) - foreign;
    if (foreign > 1 && !/\p{N}|O-O/u.test(word)) latin += foreign;
  }
  return { latin, other };
}
