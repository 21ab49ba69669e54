import type { ElementContent, Properties, Root } from 'hast';
import { remembered, text } from '../../render/index.ts';

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

/** Where a picture stands in the book; nothing where the book cannot have it. */
export type SourceOf = (url: string) => string | undefined;

/**
 * Makes the text of a chapter fit for a book: pictures that are not in the book become their alternative
 * text, and only what XHTML knows is left.
 */
export function fitTree(tree: Root, srcOf: SourceOf): ElementContent[] {
  return tree.children.flatMap((node) => (node.type === 'doctype' ? [] : fit(node, srcOf)));
}

function fit(node: ElementContent, srcOf: SourceOf): ElementContent[] {
  if (node.type === 'text') return [node];
  if (node.type !== 'element') return [];
  const children: ElementContent[] = [];
  for (const child of node.children) {
    if (child.type === 'text') children.push(child);
    else children.push(...fit(child, srcOf));
  }
  if (unwrapped.has(node.tagName)) return children;
  const tagName = renamed.get(node.tagName) ?? node.tagName;
  const properties = kept(tagName, node.properties);
  if (tagName === 'img') {
    const alt = String(properties.alt ?? '');
    const src = srcOf(String(properties.src ?? ''));
    if (src === undefined) return alt === '' ? [] : [text(alt)];
    properties.src = src;
    properties.alt = alt;
  }
  return [{ type: 'element', tagName, properties, children }];
}

function kept(tagName: string, properties: Properties): Properties {
  const found: Properties = {};
  for (const name in properties) if (isKept(`${tagName} ${name}`)) found[name] = properties[name];
  return found;
}

const isKept = remembered((about) => {
  const [tagName = '', name = ''] = about.split(' ');
  return anywhere.test(name) || byElement.get(tagName)?.test(name) === true;
});
