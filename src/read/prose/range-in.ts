import type { Node } from 'mdast';
import type { Range } from '../nodes.ts';
import { placeOf, type TextContext } from '../text-context.ts';

/**
 * Where a text stands within a node, the last time that it does; the whole node where the file spells it
 * otherwise, as an escape in YAML does.
 */
export function rangeIn(node: Node, text: string, context: Pick<TextContext, 'source'>): Range {
  const { start, end } = placeOf(node, context);
  const at = context.source.text.slice(start.offset, end.offset).lastIndexOf(text);
  if (at < 0) return { start, end };
  const { pointAt } = context.source;
  return {
    start: pointAt(start.offset + at),
    end: pointAt(start.offset + at + text.length),
  };
}
