import { createHash } from 'node:crypto';
import type { MoveNode } from '../model/index.ts';

const length = 4;

/**
 * Gives each node a short name of the line that it stands in, made of the position that the line ends
 * with: what is inserted, moved or renumbered around the line does not change it.
 */
export function lineNames(nodes: readonly MoveNode[]): (node: number) => string {
  const ends: string[] = [];
  // Children stand behind their parents.
  for (const { index, children, position } of nodes.toReversed()) {
    const next = children.find((child) => ends[child] !== undefined);
    ends[index] = (next === undefined ? undefined : ends[next]) ?? position?.key ?? '';
  }
  return (node) => {
    const hash = createHash('sha256').update(ends[node] ?? '');
    const number = Number.parseInt(hash.digest('hex').slice(0, 8), 16);
    return number.toString(36).padStart(length, '0').slice(-length);
  };
}
