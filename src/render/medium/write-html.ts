import type { Nodes, Root, RootContent } from 'hast';
import { toHtml } from 'hast-util-to-html';

/** HTML; a `raw` node stands in it as it is. */
export function writeHtml(nodes: readonly Nodes[]): string {
  return toHtml(rootOf(nodes), { allowDangerousHtml: true });
}

/** No text of an author has this character (CommonMark, 2.3), and HTML has it as `&#x0;` alone. */
const sign = '\0';
const markedId = / id="&#x0;([^"]*)"/;

/** The same in pieces; between each two of them, where it stands, an id without its ` id=""`. */
export function writeInPieces(nodes: readonly Nodes[]): string[] {
  return writeHtml(nodes.map(markId)).split(markedId);
}

/** A value as HTML has it between its quotes. */
export function escapeValue(value: string): string {
  const html = toHtml({ type: 'element', tagName: 'p', properties: { id: value }, children: [] });
  return html.slice('<p id="'.length, html.lastIndexOf('"'));
}

function rootOf(nodes: readonly Nodes[]): Root {
  return { type: 'root', children: nodes as RootContent[] };
}

function markId<Kind extends Nodes>(node: Kind): Kind {
  if (node.type !== 'element') return node;
  const { id } = node.properties;
  const properties =
    typeof id === 'string' ? { ...node.properties, id: sign + id } : node.properties;
  return { ...node, properties, children: node.children.map(markId) };
}
