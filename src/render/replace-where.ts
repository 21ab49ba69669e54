/** Replaces nodes, each by another one or by several; the list stays itself where nothing is replaced. */
export function replaceWhere<Before, After>(
  nodes: readonly Before[],
  replace: (node: Before, index: number) => After | readonly After[],
): (Before | After)[] {
  let replaced: (Before | After)[] | undefined;
  for (let index = 0; index < nodes.length; index++) {
    const node = nodes[index] as Before;
    const made = replace(node, index);
    if ((made as unknown) === node) {
      replaced?.push(node);
      continue;
    }
    replaced ??= nodes.slice(0, index);
    if (Array.isArray(made)) for (const each of made) replaced.push(each);
    else replaced.push(made as After);
  }
  return replaced ?? (nodes as Before[]);
}
