/** The marker of a quote, a list item or a footnote (CommonMark 0.31, chapter 5). */
const container = />|[-+*](?=[ \t]|$)|\d{1,9}[.)](?=[ \t]|$)|\[\^[^\]\s]{1,999}\]:/y;

/**
 * How many quotes, lists and footnotes a line of Markdown can be inside at most: one for each marker at its start,
 * and one for every two columns of indentation, since it may continue a list above.
 * @param line without its line end.
 */
export function countLevels(line: string): { levels: number; signs: number } {
  let rule: number | undefined;
  let columns = 0;
  let signs = 0;
  for (let at = 0; ; at = container.lastIndex) {
    for (; isBlank(line, at); at++) columns += line.charAt(at) === '\t' ? 4 : 1;
    const sign = line.charAt(at);
    if (sign === '-' || sign === '*') {
      rule ??= ruleStart(line, sign);
      if (at >= rule) break;
    }
    container.lastIndex = at;
    if (!container.test(line)) break;
    signs++;
  }
  return { levels: signs + (columns >> 1), signs };
}

/** Where the line may start a thematic break, as `* *` does: that opens no lists. */
function ruleStart(line: string, sign: string): number {
  let at = line.length;
  let signs = 0;
  while (at > 0 && (isBlank(line, at - 1) || line.charAt(at - 1) === sign)) {
    at--;
    if (line.charAt(at) === sign) signs++;
  }
  return signs < 3 ? line.length : at;
}

function isBlank(line: string, at: number): boolean {
  const sign = line.charAt(at);
  return sign === ' ' || sign === '\t';
}
