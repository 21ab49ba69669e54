import type { Element, ElementContent, Root } from 'hast';
import { element, elementsIn, text } from '../../render/index.ts';

/**
 * Tells reading systems what is a note and what leads to one, so that they can show it where it is asked for:
 * EPUB Structural Semantics Vocabulary 1.1, and the same in DPUB-ARIA 1.1 for readers who listen. A list item may
 * have no such role (ARIA in HTML), so each note becomes an aside with its number. Changes the tree.
 */
export function noteRoles(tree: Root): void {
  for (const node of elementsIn(tree)) {
    const { properties } = node;
    if ('dataFootnoteRef' in properties) setRole(node, 'noteref', 'doc-noteref');
    if ('dataFootnoteBackref' in properties) setRole(node, 'backlink', 'doc-backlink');
    if ('dataFootnotes' in properties) {
      properties['epub:type'] = 'footnotes';
      node.children = node.children.flatMap((child) =>
        child.type === 'element' && child.tagName === 'ol' ? notesOf(child) : [child],
      );
    }
  }
}

function notesOf(list: Element): ElementContent[] {
  const items = list.children.filter(
    (child): child is Element => child.type === 'element' && child.tagName === 'li',
  );
  return items.map(({ properties, children }, index) => {
    const number = text(`${index + 1}. `);
    const first = children.find((child): child is Element => child.type === 'element');
    const inText = first?.tagName === 'p';
    if (inText) first.children.unshift(number);
    const note = element('aside', { id: properties.id }, inText ? children : [number, ...children]);
    return setRole(note, 'footnote', 'doc-footnote');
  });
}

function setRole(node: Element, type: string, role: string): Element {
  node.properties['epub:type'] = type;
  node.properties.role = role;
  return node;
}
