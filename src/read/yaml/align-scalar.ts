import type { Scalar } from 'yaml';

const escapeLength: Readonly<Record<string, number>> = { x: 4, u: 6, U: 10 };

/**
 * For each offset of a YAML scalar's value, and for its end, the offset in the source text: it accounts for quotes,
 * block headers, escapes, folded lines and indentation (YAML 1.2.2, chapters 7 and 8). White space that YAML drops
 * may be off; words are exact.
 */
export function alignScalar(written: string, value: string, style: Scalar.Type | undefined) {
  const isDouble = style === 'QUOTE_DOUBLE';
  const isSingle = style === 'QUOTE_SINGLE';
  const isBlock = style === 'BLOCK_LITERAL' || style === 'BLOCK_FOLDED';
  let at = isDouble || isSingle ? 1 : isBlock ? written.search(/\n|$/) + 1 : 0;
  const offsets: number[] = [];
  while (offsets.length < value.length && at < written.length) {
    const wanted = value.charAt(offsets.length);
    const found = written.charAt(at);
    if (isDouble && found === '\\') {
      const next = written.charAt(at + 1);
      if (next === '\r' || next === '\n') {
        // An escaped line end produces no character.
        at += 1 + (/^\s*/.exec(written.slice(at + 1))?.[0].length ?? 0);
        continue;
      }
      const units = next === 'U' && (value.codePointAt(offsets.length) ?? 0) > 0xffff ? 2 : 1;
      for (let unit = 0; unit < units; unit++) offsets.push(at);
      at += escapeLength[next] ?? 2;
    } else if (isSingle && found === "'") {
      offsets.push(at);
      at += 2;
    } else if (found === wanted || (/\s/.test(wanted) && /\s/.test(found))) {
      offsets.push(at);
      at++;
    } else if (/\s/.test(found)) at++;
    else break;
  }
  while (offsets.length <= value.length) offsets.push(at);
  return offsets;
}
