import { type Document, isAlias, isMap, isScalar, isSeq, type YAMLMap } from 'yaml';
import { duplicateKey, explainReference, type YamlFault } from './yaml-fault.ts';

/**
 * How deep mappings and lists may be nested. The course language has two levels; the library recurses once a level,
 * and doubles the length of a key that is a list.
 */
const deepest = 20;

/**
 * Finds valid YAML that the course language does not use: keys that are lists, duplicate keys, references, and deep
 * nesting. Code behind this may recurse. The library would find duplicates by comparing each key with all before it.
 */
export function findStructureFault(document: Document, text: string): YamlFault | undefined {
  const open: { node: unknown; depth: number }[] = [{ node: document.contents, depth: 1 }];
  for (let item = open.pop(); item; item = open.pop()) {
    const { node, depth } = item;
    if (isAlias(node)) return explainReference(text);
    if (!isMap(node) && !isSeq(node)) continue;
    const [start = 0, end = start] = node.range ?? [];
    if (depth > deepest) {
      return {
        what: `lists and names lie in one another more than ${deepest} times`,
        hint: 'Put the value in quotes if it is a text, and close its brackets.',
        start,
        end: Math.min(end, start + 1),
      };
    }
    if (isMap(node)) {
      const fault = findKeyFault(node, text);
      if (fault) return fault;
    }
    const inner = isMap(node) ? node.items.map(({ value }) => value) : node.items;
    for (const child of inner.toReversed()) open.push({ node: child, depth: depth + 1 });
  }
  return undefined;
}

function findKeyFault({ items }: YAMLMap, text: string): YamlFault | undefined {
  const seen = new Set<string>();
  for (const { key } of items) {
    if (isAlias(key)) return explainReference(text);
    if (!isScalar(key)) {
      const [start = 0] = (isMap(key) || isSeq(key) ? key.range : undefined) ?? [];
      return {
        what: 'a name is a list',
        hint: 'Write one `name: value` a line; put a value that begins with a bracket in quotes.',
        start,
        end: start + 1,
      };
    }
    const name = String(key.value);
    if (seen.has(name)) return duplicateKey(text, key.range?.[0] ?? 0);
    seen.add(name);
  }
  return undefined;
}
