import type { Place } from '../../diagnostics/index.ts';
import type { MoveNode } from '../../model/index.ts';
import { moveName } from './move-name.ts';

/** `After 7...Be7`, or `At the start of the block`: how a sentence about a position begins. */
export function after(node: MoveNode, parent: MoveNode | undefined): string {
  return node.written ? `After ${moveName(node, parent)}` : 'At the start of the block';
}

/** `in line 12`, `in chapters/2.md, line 41`, as seen from a place. */
export function whereIs(place: Place, from: Place): string {
  return place.file === from.file
    ? `in line ${place.start.line}`
    : `in ${place.file}, line ${place.start.line}`;
}
