import type { NodeInWork } from './work.ts';

/** Whether the second of two nodes is on the way to the first or on its continuation. */
export type LineTest = (at: number, other: number) => boolean;

/**
 * Makes that test. It walks the tree once; each question then only compares numbers. A node continues with its first
 * child, and so on.
 */
export function createLineTest(nodes: readonly NodeInWork[]): LineTest {
  const entered: number[] = [];
  const left: number[] = [];
  /** The number of the chain of first children that a node belongs to. */
  const chain: number[] = [];
  let clock = 0;
  let chains = 0;
  const open = [{ index: 0, child: 0 }];
  chain[0] = 0;
  while (open.length > 0) {
    const top = open.at(-1);
    if (top === undefined) break;
    if (top.child === 0) entered[top.index] = clock++;
    const child = nodes[top.index]?.children[top.child];
    if (child === undefined) {
      left[top.index] = clock;
      open.pop();
      continue;
    }
    chain[child] = top.child === 0 ? (chain[top.index] ?? 0) : ++chains;
    top.child++;
    open.push({ index: child, child: 0 });
  }
  const within = (root: number, node: number) =>
    (entered[root] ?? 0) <= (entered[node] ?? 0) && (entered[node] ?? 0) < (left[root] ?? 0);
  return (at, other) => within(other, at) || (chain[other] === chain[at] && within(at, other));
}
