interface LineNode {
  readonly children: readonly number[];
}

/** The nodes of a tree's main line: its start, then always the first move. */
export function mainLine<Node extends LineNode>(nodes: readonly Node[]): Node[] {
  const line: Node[] = [];
  for (let node = nodes[0]; node; node = nodes[node.children[0] ?? -1]) line.push(node);
  return line;
}
