import type { ProseMove } from '../read/index.ts';
import type { TreeNode } from './block-tree.ts';

/** One block to look in, and the node that the text stands at where it is a comment of it. */
export interface ProseScope {
  readonly nodes: readonly TreeNode[];
  readonly at?: number;
}

/**
 * Finds a run of moves that the text mentions in a block: the node of each move, as far as the
 * run can be followed. Of several places that fit the one nearest to the comment is taken (its
 * own line before other lines), else the least deep in variations.
 */
export function findProseMoves(moves: readonly ProseMove[], scope: ProseScope): number[] {
  const [first, ...rest] = moves;
  if (!first) return [];
  const own = lineOf(scope);
  let best: { run: number[]; rank: number } | undefined;
  for (const node of scope.nodes) {
    if (!isMove(node, first)) continue;
    const run = [node.index];
    let last = node;
    for (const move of rest) {
      const next = last.children
        .map((index) => scope.nodes[index])
        .find((child) => child && isMove(child, move));
      if (!next) break;
      run.push(next.index);
      last = next;
    }
    const rank = run.length * 1000 - node.depth + (own.has(node.index) ? 500 : 0);
    if (!best || rank > best.rank) best = { run, rank };
  }
  return best?.run ?? [];
}

function isMove(node: TreeNode, { san, number, color }: ProseMove): boolean {
  const { move } = node;
  if (move) {
    if (move.number !== number || move.color !== color) return false;
    return bare(move.san) === bare(san) || bare(node.written?.san ?? '') === bare(san);
  }
  // A move that cannot be played has a finding of its own; the mention of it needs none.
  return node.fault !== undefined && bare(node.written?.san ?? '') === bare(san);
}

function bare(san: string): string {
  return san.replace(/[+#x=]/g, '').replace(/0/g, 'O');
}

/** The moves before a comment's move and its continuation. */
function lineOf({ nodes, at }: ProseScope): Set<number> {
  const line = new Set<number>();
  for (let node = at === undefined ? undefined : nodes[at]; node; ) {
    line.add(node.index);
    node = node.parent === undefined ? undefined : nodes[node.parent];
  }
  for (let node = at === undefined ? undefined : nodes[at]; node; ) {
    line.add(node.index);
    const [next] = node.children;
    node = next === undefined ? undefined : nodes[next];
  }
  return line;
}
