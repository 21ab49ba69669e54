import type { Element, Nodes, Root } from 'hast';
import { raw } from 'hast-util-raw';
import { defaultSchema, sanitize } from 'hast-util-sanitize';
import { SKIP, visit } from 'unist-util-visit';

/** Stands for a part that the site made itself while the author's HTML is cleaned. */
const standIn = 'course-part';

/**
 * Makes the author's raw HTML safe: scripts, event handlers, styles and unsafe addresses go,
 * the rest is parsed as a browser would. Parts that the site made are untouched.
 */
export function cleanRawHtml(tree: Nodes, isOurs: (node: Element) => boolean): Root {
  const ours: Element[] = [];
  visit(tree, 'element', (node, index, parent) => {
    if (parent === undefined || index === undefined || !isOurs(node)) return undefined;
    ours.push(node);
    parent.children[index] = {
      type: 'element',
      tagName: standIn,
      properties: { className: [String(ours.length - 1)] },
      children: [],
    };
    // What is within it stays with it.
    return [SKIP, index + 1];
  });
  const clean = sanitize(raw(tree), {
    ...defaultSchema,
    tagNames: [...(defaultSchema.tagNames ?? []), standIn, 'figure', 'figcaption', 'abbr'],
    attributes: {
      ...defaultSchema.attributes,
      // The default lets these keep but one class each; the site's own have others.
      h2: ['className'],
      a: [
        ...(defaultSchema.attributes?.a ?? []).filter((name) => !Array.isArray(name)),
        'className',
      ],
      '*': [...(defaultSchema.attributes?.['*'] ?? []), 'className', 'dataAt', 'loading'],
    },
    protocols: { ...defaultSchema.protocols, src: ['data'] },
    strip: ['script', 'style'],
    clobber: [],
  });
  visit(clean, 'element', keepOwnAddresses);
  visit(clean, 'element', (node, index, parent) => {
    if (node.tagName !== standIn || parent === undefined || index === undefined) return;
    const names = node.properties.className;
    const part = ours[Number(Array.isArray(names) ? names[0] : names)];
    if (part !== undefined) parent.children[index] = part;
  });
  return clean.type === 'root' ? clean : { type: 'root', children: [clean as Element] };
}

/**
 * Nothing is fetched from another host. An address without a scheme may still name one, as
 * `//host/x.png` does, and browsers read a backslash as a slash.
 */
function keepOwnAddresses({ properties }: Element): void {
  delete properties.srcSet;
  if (/^[\s\\/]*[\\/]{2}|\\/.test(String(properties.src ?? ''))) delete properties.src;
}
