import type { Element, ElementContent, Properties, Root, RootContent } from 'hast';
import { toString as plainText } from 'mdast-util-to-string';
import { element } from '../hast.ts';

/** How a chapter's tree is changed to stand on one page with all others. */
export interface Fit {
  /** The id that an id of the chapter's own page gets. */
  readonly id: (id: string) => string;
  /** A link's new address, and where it leads in words where they help on paper. */
  readonly link: (
    href: string,
    words: string,
  ) => { readonly href: string; readonly place?: string | undefined };
}

/** A chapter that only shows (`makeStill`) becomes a part of the handout: its headings go down by one. */
export function fitForPaper(tree: Root, fit: Fit): Root {
  return { ...tree, children: tree.children.flatMap((node): RootContent[] => fitNode(node, fit)) };
}

function fitNode<Kind extends RootContent | ElementContent>(
  node: Kind,
  fit: Fit,
): (Kind | ElementContent)[] {
  if (node.type !== 'element') return [node];
  const classes = [node.properties.className].flat();
  // The places of a pattern have their moves beside them.
  const within: Fit = classes.includes('places')
    ? { ...fit, link: (href) => ({ href: fit.link(href, '').href }) }
    : fit;
  const children = node.children.flatMap((child) => fitNode(child, within) as ElementContent[]);
  const properties: Properties = { ...node.properties };
  for (const name of ['id', 'ariaDescribedBy', 'ariaLabelledBy']) {
    const id = properties[name];
    if (typeof id === 'string') properties[name] = fit.id(id);
  }
  // On one page the exercises of all chapters would be landmarks of one name.
  if (classes.includes('exercise')) delete properties.ariaLabel;
  const { href } = properties;
  const after: ElementContent[] = [];
  if (node.tagName === 'a' && typeof href === 'string') {
    const { href: there, place } = fit.link(href, plainText(node));
    properties.href = there;
    const telling = !classes.includes('prose-move') && !('dataFootnoteRef' in properties);
    if (place !== undefined && telling) {
      after.push(element('span', { className: ['place'] }, [` (${place})`]));
    }
  }
  return [{ ...(node as Element), tagName: fitTag(node.tagName), properties, children }, ...after];
}

function fitTag(name: string): string {
  // The page's script would make it live.
  if (name === 'course-board') return 'div';
  const [, level] = /^h([2-5])$/.exec(name) ?? [];
  return level === undefined ? name : `h${Number(level) + 1}`;
}
