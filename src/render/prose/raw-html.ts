import type { Element, ElementContent, ElementData, Nodes, Root } from 'hast';
import { raw } from 'hast-util-raw';
import { defaultSchema, sanitize } from 'hast-util-sanitize';
import { SKIP, visit } from 'unist-util-visit';
import { visitParents } from 'unist-util-visit-parents';
import type { IdGiver } from '../../addresses/index.ts';
import type { Role } from '../document.ts';

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
export function cleanRawHtml(tree: Nodes, ids: Pick<IdGiver, 'give'>): Root {
  visit(tree, (node) => {
    if (node.type === 'raw') node.value = withoutOtherTags(node.value);
  });
  const sign = signOf(tree);
  const ours: ElementContent[] = [];
  const told: ElementData[] = [];
  visit(tree, (node, index, parent) => {
    if (parent === undefined || index === undefined) return undefined;
    if (!isOurs(node)) {
      if (node.type === 'element' && node.data) {
        const names = [node.properties.className ?? []].flat().filter((name) => name !== null);
        node.properties.className = [
          ...names.map(String),
          `${sign}data-${told.push(node.data) - 1}`,
        ];
      }
      return undefined;
    }
    ours.push(node as ElementContent);
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
  visit(clean, 'element', (node) => giveBackData(node, `${sign}data-`, told));
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
  delete link.data;
}

const blocks: ReadonlySet<Role> = new Set([
  'moves',
  'diagram',
  'exercise',
  'game',
  'pattern',
  'answers',
]);

/** What a block of the course language became, and what is no HTML yet. */
function isOurs(node: Nodes): boolean {
  if (node.type === 'element') return blocks.has(node.data?.role ?? 'move');
  return ['board', 'diagramNumber', 'lastBoard', 'places'].includes(node.type);
}

/** The data of elements that the parser has made anew. */
function giveBackData(node: Element, sign: string, told: readonly ElementData[]): void {
  const names = [node.properties.className ?? []].flat().map(String);
  const mark = names.find((name) => name.startsWith(sign));
  if (mark === undefined) return;
  const data = told[Number(mark.slice(sign.length))];
  if (data) node.data = data;
  const others = names.filter((name) => name !== mark);
  if (others.length > 0) node.properties.className = others;
  else delete node.properties.className;
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
