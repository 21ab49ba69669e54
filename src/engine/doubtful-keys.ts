import type { Place } from '../diagnostics/index.ts';
import { type Course, type MoveNode, treesOf } from '../model/index.ts';

/**
 * The keys of the positions that findings speak of: before and after the move at which one stands, and behind the
 * moves from there. Of an exercise all.
 */
export function doubtfulKeys(course: Course, places: readonly Place[]): ReadonlySet<string> {
  const told = new Set(places.map(nameOf));
  const keys = new Set<string>();
  const add = (node: MoveNode | undefined) => {
    if (node?.position) keys.add(node.position.key);
  };
  for (const block of course.chapters.flatMap(({ blocks }) => blocks)) {
    for (const tree of treesOf(block)) {
      for (const node of tree) {
        // What is told of a start stands at the first sign of its block.
        const place = node.written?.place ?? block.place;
        if (!told.has(nameOf(place))) continue;
        const around = block.kind === 'exercise' ? treesOf(block).flat() : nodesAround(node, tree);
        around.forEach(add);
      }
    }
  }
  return keys;
}

function nodesAround(node: MoveNode, tree: readonly MoveNode[]): (MoveNode | undefined)[] {
  const parent = node.parent === undefined ? undefined : tree[node.parent];
  return [parent, node, ...node.children.map((child) => tree[child])];
}

function nameOf({ file, start }: Place): string {
  return `${start.line}:${start.column} ${file}`;
}
