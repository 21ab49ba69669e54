import type { Text } from 'mdast';
import { type Point, pointBehind } from '../../diagnostics/index.ts';

/**
 * The value of a YAML scalar as text nodes, each of which is written in the file letter by letter: where a line is
 * folded or a sign escaped, another begins.
 * @param offsets where each letter of the value is written, from the start of `written`.
 * @param pointAt from such an offset to its point in the file.
 */
export function textOfScalar(
  value: string,
  { written, offsets, pointAt }: Written,
): readonly Text[] {
  const nodes: Text[] = [];
  let from = 0;
  for (let at = 1; at <= value.length; at++) {
    const last = offsets[at - 1] ?? 0;
    const goesOn = offsets[at] === last + 1 && !/[\r\n]/.test(written.charAt(last));
    if (goesOn && at < value.length) continue;
    const start = pointAt(offsets[from] ?? 0);
    const position = { start, end: pointBehind(start, at - from) };
    nodes.push({ type: 'text', value: value.slice(from, at), position });
    from = at;
  }
  return nodes;
}

interface Written {
  readonly written: string;
  readonly offsets: readonly number[];
  readonly pointAt: (offset: number) => Point;
}
