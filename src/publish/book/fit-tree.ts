import type { Element, ElementContent, Properties, Root } from 'hast';
import { text } from '../../site/render/index.ts';

/** Attributes that a book's pages have; an author's HTML may bring others, and obsolete ones. */
const anywhere = /^(?:id|className|lang|dir|title|role|aria[A-Z]\w*|epub:type)$/;
const byElement: ReadonlyMap<string, RegExp> = new Map([
  ['a', /^href$/],
  ['img', /^(?:src|alt|width|height)$/],
  ['ol', /^(?:start|type|reversed)$/],
  ['li', /^value$/],
  ['td', /^(?:colSpan|rowSpan|headers)$/],
  ['th', /^(?:colSpan|rowSpan|headers|scope|abbr)$/],
]);
/** Elements that HTML has given up, and what says the same. */
const renamed: ReadonlyMap<string, string> = new Map([
  ['tt', 'code'],
  ['strike', 's'],
]);
const unwrapped = new Set(['picture', 'source', 'input']);

export interface BookPlaces {
  /** Where a link leads within the book or on the web; nothing where the book has no such place. */
  readonly href: (url: string) => string | undefined;
  /** Where a picture stands in the book; nothing where the book cannot have it. */
  readonly src: (url: string) => string | undefined;
}

/**
 * Makes the text of a chapter fit for a book: links that lead nowhere become text, pictures that
 * are not in the book their alternative text, and only what XHTML knows is left.
 */
export function fitTree(tree: Root, places: BookPlaces): ElementContent[] {
  return tree.children.flatMap((node) => (node.type === 'doctype' ? [] : fit(node, places)));
}

function fit(node: ElementContent, places: BookPlaces): ElementContent[] {
  if (node.type === 'text') return [node];
  if (node.type !== 'element') return [];
  const children = node.children.flatMap((child) => fit(child, places));
  if (unwrapped.has(node.tagName)) return children;
  const tagName = renamed.get(node.tagName) ?? node.tagName;
  const properties = kept(tagName, node.properties);
  if (tagName === 'a') {
    const href = places.href(String(properties.href ?? ''));
    // Without an address it may still be where another link leads.
    if (href === undefined) return [span({ ...properties, href: undefined }, children)];
    properties.href = href;
  }
  if (tagName === 'img') {
    const alt = String(properties.alt ?? '');
    const src = places.src(String(properties.src ?? ''));
    if (src === undefined) return alt === '' ? [] : [text(alt)];
    properties.src = src;
    properties.alt = alt;
  }
  return [{ type: 'element', tagName, properties, children }];
}

function span(properties: Properties, children: ElementContent[]): Element {
  return { type: 'element', tagName: 'span', properties, children };
}

function kept(tagName: string, properties: Properties): Properties {
  return Object.fromEntries(
    Object.entries(properties).filter(
      ([name]) => anywhere.test(name) || byElement.get(tagName)?.test(name),
    ),
  );
}
