import type { Element, ElementContent, Properties, RootContent } from 'hast';
import { type Role, text } from '../../render/index.ts';

/** Elements that mail programs do not know (caniemail: HTML5 semantics), or set in their own way. */
const renamed: ReadonlyMap<string, string> = new Map([
  ['section', 'div'],
  ['header', 'div'],
  ['figure', 'div'],
  ['figcaption', 'div'],
  ['article', 'div'],
  ['code', 'span'],
  ['tt', 'span'],
  ['strike', 's'],
]);
const unwrapped = new Set(['picture', 'source', 'input', 'abbr']);

/** Attributes that a letter needs; ids and names of the page's parts are not among them. */
const keptAttributes: ReadonlyMap<string, readonly string[]> = new Map([
  ['a', ['href']],
  ['ol', ['start']],
  ['li', ['value']],
  ['td', ['colSpan', 'rowSpan', 'className']],
  ['th', ['colSpan', 'rowSpan', 'className']],
]);
/** Of spans that the style sheet of letters knows. */
const keptSpans: ReadonlySet<Role | undefined> = new Set(['to-move', 'variation']);

export interface MailPicture {
  readonly src: string;
  readonly width: number;
  readonly height: number;
}

interface Surroundings {
  readonly pictureAt: (url: string) => MailPicture | undefined;
  readonly inGame: boolean;
  /** What a node is directly within. */
  readonly parent: 'moves' | 'variations' | 'other';
}

/** The text of a letter in the few elements that every mail program shows alike. */
export function mailTree(
  nodes: readonly RootContent[],
  pictureAt: Surroundings['pictureAt'],
): ElementContent[] {
  const around = { pictureAt, inGame: false, parent: 'other' } as const;
  return nodes.flatMap((node) => (node.type === 'doctype' ? [] : plain(node, around)));
}

function plain(node: ElementContent, around: Surroundings): ElementContent[] {
  if (node.type === 'text') return [node];
  if (node.type !== 'element') return [];
  const { role } = node.data ?? {};
  if ('dataFootnoteBackref' in node.properties) return [];
  const mainLine = around.parent === 'moves' && node.tagName === 'p' && !around.inGame;
  const within: Surroundings = {
    pictureAt: around.pictureAt,
    inGame: around.inGame || role === 'game',
    parent: role === 'moves' || role === 'variations' ? role : 'other',
  };
  const children = node.children.flatMap((child) => {
    const made = plain(child, within);
    return mainLine && isMove(child) ? [bold(made)] : made;
  });
  if (node.tagName === 'img') return picture(node, around.pictureAt);
  if (unwrapped.has(node.tagName)) return children;
  if (node.tagName === 'span' && !keptSpans.has(role)) return children;
  // Lists without bullets, which some programs would draw.
  const isLines = role === 'variations' || around.parent === 'variations';
  const tagName = isLines ? 'div' : (renamed.get(node.tagName) ?? node.tagName);
  const properties = kept(node, tagName);
  if (/^(?:code|tt)$/.test(node.tagName)) properties.className = ['code'];
  return [
    { type: 'element', tagName, properties, children: mainLine ? joined(children) : children },
  ];
}

function kept({ properties }: Element, tagName: string): Properties {
  const names = keptAttributes.get(tagName) ?? ['className'];
  return Object.fromEntries(Object.entries(properties).filter(([name]) => names.includes(name)));
}

function picture(
  { properties: { src, alt, className } }: Element,
  pictureAt: Surroundings['pictureAt'],
): ElementContent[] {
  const found = pictureAt(String(src ?? ''));
  const words = String(alt ?? '');
  if (found === undefined) return words === '' ? [] : [text(words)];
  const { width, height } = found;
  // A board has its looks from the style sheet; this, too, shrinks with the column.
  const style =
    className === undefined ? `width: 100%; max-width: ${width}px; height: auto` : undefined;
  return [
    {
      type: 'element',
      tagName: 'img',
      properties: { className, src: found.src, alt: words, width, height, style },
      children: [],
    },
  ];
}

function isMove(node: ElementContent): boolean {
  return node.type === 'element' && node.data?.role === 'move';
}

function bold(children: ElementContent[]): Element {
  return { type: 'element', tagName: 'b', properties: {}, children };
}

/** Neighbours in bold become one: `<b>1. d4</b> <b>d5</b>` says nothing more, and takes room. */
function joined(children: readonly ElementContent[]): ElementContent[] {
  const done: ElementContent[] = [];
  for (const node of children) {
    const space = done.at(-1);
    const before = space?.type === 'text' && space.value.trim() === '' ? done.at(-2) : undefined;
    if (isBold(node) && isBold(before) && space !== undefined) {
      before.children.push(space, ...node.children);
      done.pop();
    } else done.push(node);
  }
  return done;
}

function isBold(node: ElementContent | undefined): node is Element {
  return node?.type === 'element' && node.tagName === 'b';
}
