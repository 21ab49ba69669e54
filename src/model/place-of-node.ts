import type { PhrasingContent, RootContent } from 'mdast';
import type { Place } from '../diagnostics/index.ts';

/** The place of a text node. Every node has one after `read`. */
export function placeOfNode(node: RootContent | PhrasingContent, file: string): Place {
  const point = (
    at: { line: number; column: number; offset?: number | undefined } | undefined,
  ) => ({
    line: at?.line ?? 1,
    column: at?.column ?? 1,
    offset: at?.offset ?? 0,
  });
  return { file, start: point(node.position?.start), end: point(node.position?.end) };
}
