import type { Nodes, Root, RootContent } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { elementsIn } from '../nodes-in.ts';

/** Writes HTML; `raw` nodes are copied as they are. */
export function writeHtml(nodes: readonly Nodes[]): string {
  return toHtml(rootOf(nodes), { allowDangerousHtml: true });
}

/** No author's text contains this character (CommonMark, 2.3), and HTML only as `&#x0;`. */
const sign = '\0';
const markedId = / id="&#x0;([^"]*)"/;

/** Writes HTML in pieces, cut where an ` id="…"` belongs: the pieces alternate with ids. Changes the ids of the nodes. */
export function writeInPieces(nodes: readonly Nodes[]): string[] {
  for (const { properties } of elementsIn(rootOf(nodes))) {
    if (typeof properties.id === 'string') properties.id = sign + properties.id;
  }
  return writeHtml(nodes).split(markedId);
}

/** Escapes a value for a quoted attribute. */
export function escapeValue(value: string): string {
  const html = toHtml({ type: 'element', tagName: 'p', properties: { id: value }, children: [] });
  return html.slice('<p id="'.length, html.lastIndexOf('"'));
}

function rootOf(nodes: readonly Nodes[]): Root {
  return { type: 'root', children: nodes as RootContent[] };
}
