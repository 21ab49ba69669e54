import type { Element, ElementContent, ElementData, Nodes, Root } from 'hast';
import { raw } from 'hast-util-raw';
import { defaultSchema, sanitize } from 'hast-util-sanitize';
import { SKIP, visit } from 'unist-util-visit';
import { visitParents } from 'unist-util-visit-parents';
import type { IdGiver } from '../../addresses/index.ts';
import type { Role } from '../document.ts';

/**
 * Replaces parts that the site made itself while the author's HTML is cleaned; being of the same kind, it is allowed
 * in the same places.
 */
const standIn = 'div';

const allowed = new Set([...(defaultSchema.tagNames ?? []), 'figure', 'figcaption', 'abbr']);
/** Removed with their content. */
const strip = ['script', 'style'];

/**
 * Makes the author's raw HTML safe: removes scripts, event handlers, styles and unsafe addresses, and parses the rest
 * as a browser would. Parts that the site made are untouched, with their ids; an author's id that is taken already is
 * changed.
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
    // Its content stays inside it.
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
      // By default these may have only one class each; the site's own have others.
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
    // An unclosed link would contain moves, which are links, and links cannot be nested.
    for (const around of ancestors) {
      if (around.type === 'element' && around.tagName === 'a') openLink(around);
    }
    return SKIP;
  });
  return clean.type === 'root' ? clean : { type: 'root', children: [clean as Element] };
}

/**
 * Removes tags of elements that no text has before it is parsed: an unclosed `<template>`, `<select>` or `<title>`
 * would swallow all that follows.
 */
function withoutOtherTags(html: string): string {
  // An unclosed tag matches to the end, so this takes linear time.
  return html.replace(/<\/?([a-z][^\s/>]*)[^>]*(?:>|$)/gi, (tag, name: string) => {
    const known = name.toLowerCase();
    return allowed.has(known) || strip.includes(known) ? tag : '';
  });
}

/** Turns a link into a plain element around its content. */
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

/** Whether a node is what the site made of a block, or a node that is not HTML yet. */
function isOurs(node: Nodes): boolean {
  if (node.type === 'element') return blocks.has(node.data?.role ?? 'move');
  return ['board', 'diagramNumber', 'lastBoard', 'places'].includes(node.type);
}

/** Restores the data of elements, which the parser has recreated. */
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

/** A word that the author's HTML does not contain: it marks the site's own elements. */
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
/** A `srcset` of the course's own pictures, as `read` writes it. */
const ownPictures = new RegExp(`^${picture}(?:, ${picture})*$`);

/**
 * Allows no pictures from other hosts, and none inside an address. An address without a scheme may still name a host,
 * as `//host/x.png` does, and browsers read a backslash as a slash.
 */
function keepOwnAddresses({ properties }: Element): void {
  if (!ownPictures.test(String(properties.srcSet ?? ''))) delete properties.srcSet;
  if (/^[\s\\/]*[\\/]{2}|\\|^[^/?#]*:/.test(String(properties.src ?? ''))) delete properties.src;
}
