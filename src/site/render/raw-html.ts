import type { Element, Nodes, Root } from 'hast';
import { raw } from 'hast-util-raw';
import { defaultSchema, sanitize } from 'hast-util-sanitize';
import { SKIP, visit } from 'unist-util-visit';
import { visitParents } from 'unist-util-visit-parents';
import type { IdGiver } from '../../addresses/index.ts';

/**
 * Stands for a part that the site made itself while the author's HTML is cleaned: an element of the
 * kind that such a part is, so that it is put where the part may stand.
 */
const standIn = 'div';

const allowed = new Set([...(defaultSchema.tagNames ?? []), 'figure', 'figcaption', 'abbr']);
/** They go with all that is in them. */
const strip = ['script', 'style'];

/**
 * Makes the author's raw HTML safe: scripts, event handlers, styles and unsafe addresses go,
 * the rest is parsed as a browser would. Parts that the site made are untouched, and so are their
 * ids; an id of the author's becomes another where something has it already.
 */
export function cleanRawHtml(
  tree: Nodes,
  isOurs: (node: Element) => boolean,
  ids: Pick<IdGiver, 'give'>,
): Root {
  visit(tree, (node) => {
    if (node.type === 'raw') node.value = withoutOtherTags(node.value);
  });
  const sign = signOf(tree);
  const ours: Element[] = [];
  visit(tree, 'element', (node, index, parent) => {
    if (parent === undefined || index === undefined || !isOurs(node)) return undefined;
    ours.push(node);
    parent.children[index] = {
      type: 'element',
      tagName: standIn,
      properties: { className: [`${sign}${ours.length - 1}`] },
      children: [],
    };
    // What is within it stays with it.
    return [SKIP, index + 1];
  });
  visit(tree, 'element', ({ properties }) => {
    if (typeof properties.id === 'string') properties.id = sign + properties.id;
  });
  const clean = sanitize(raw(tree), {
    ...defaultSchema,
    tagNames: [...allowed],
    attributes: {
      ...defaultSchema.attributes,
      // The default lets these keep but one class each; the site's own have others.
      h2: ['className'],
      img: [...(defaultSchema.attributes?.img ?? []), 'srcSet', 'sizes'],
      source: ['srcSet', 'sizes', 'media', 'type'],
      a: [
        ...(defaultSchema.attributes?.a ?? []).filter((name) => !Array.isArray(name)),
        'className',
      ],
      '*': [...(defaultSchema.attributes?.['*'] ?? []), 'className', 'dataAt', 'loading'],
    },
    strip,
    clobber: [],
  });
  visit(clean, 'element', keepOwnAddresses);
  settleIds(clean, sign, ids);
  visitParents(clean, 'element', (node, ancestors) => {
    const [name = ''] = [node.properties.className].flat().map(String);
    const part = name.startsWith(sign) ? ours[Number(name.slice(sign.length))] : undefined;
    const parent = ancestors.at(-1);
    if (part === undefined || parent === undefined) return;
    parent.children[parent.children.indexOf(node)] = part;
    // A link that was left open: moves are links, and there is no link in a link.
    for (const around of ancestors) {
      if (around.type === 'element' && around.tagName === 'a') openLink(around);
    }
    return SKIP;
  });
  return clean.type === 'root' ? clean : { type: 'root', children: [clean as Element] };
}

/**
 * Takes out the tags of elements that no text has, before they are parsed: left open, a `<template>`,
 * a `<select>` or a `<title>` would take all that follows along.
 */
function withoutOtherTags(html: string): string {
  // A tag that is not closed is one to the end: looked at once, however many begin in it.
  return html.replace(/<\/?([a-z][^\s/>]*)[^>]*(?:>|$)/gi, (tag, name: string) => {
    const known = name.toLowerCase();
    return allowed.has(known) || strip.includes(known) ? tag : '';
  });
}

/** Makes a link an element that only holds its content. */
function openLink(link: Element): void {
  link.tagName = 'span';
  link.properties = {};
}

/** A word that no HTML of the author has in it: what bears it is the site's own. */
function signOf(tree: Nodes): string {
  let sign = 'own-';
  visit(tree, (node) => {
    if (node.type !== 'raw') return;
    for (const [like] of node.value.matchAll(/own-+/g)) {
      if (like.length >= sign.length) sign = `${like}-`;
    }
  });
  return sign;
}

function settleIds(tree: Nodes, sign: string, ids: Pick<IdGiver, 'give'>): void {
  visit(tree, 'element', ({ properties }) => {
    if (typeof properties.id !== 'string') return;
    const own = properties.id.startsWith(sign);
    properties.id = own ? properties.id.slice(sign.length) : ids.give(properties.id);
  });
}

const picture = 'media\\/[^\\s\\\\]+(?: [\\d.]+[wx])?';
/** A list of pictures that the reader has found in the course, as it writes them. */
const ownPictures = new RegExp(`^${picture}(?:, ${picture})*$`);

/**
 * Nothing is fetched from another host, and no picture stands in its address. An address without a
 * scheme may still name a host, as `//host/x.png` does, and browsers read a backslash as a slash.
 */
function keepOwnAddresses({ properties }: Element): void {
  if (!ownPictures.test(String(properties.srcSet ?? ''))) delete properties.srcSet;
  if (/^[\s\\/]*[\\/]{2}|\\|^[^/?#]*:/.test(String(properties.src ?? ''))) delete properties.src;
}
