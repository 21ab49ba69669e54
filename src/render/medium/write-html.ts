import type { Nodes, Root, RootContent } from 'hast';
import { toHtml } from 'hast-util-to-html';

/** Writes HTML; `raw` nodes are copied as they are. */
export function writeHtml(nodes: readonly Nodes[]): string {
  return toHtml(rootOf(nodes), { allowDangerousHtml: true });
}

/** No author's text contains this character (CommonMark, 2.3), and HTML only as `&#x0;`. */
const sign = '\0';
const markedId = / id="&#x0;([^"]*)"/;

/** Writes HTML in pieces, cut where an ` id="…"` belongs: the pieces alternate with ids. */
export function writeInPieces(nodes: readonly Nodes[]): string[] {
  return writeHtml(nodes.map(markId)).split(markedId);
}

/** Escapes a value for a quoted attribute. */
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
