import type { Element, ElementContent } from 'hast';
import { toString as plainText } from 'mdast-util-to-string';
import type { Block } from '../model/index.ts';

/** Whether a block says nothing as it is shown, or not all of its moves: then its source says more. */
export function isLost(block: Block | undefined, shown: readonly ElementContent[]): boolean {
  if (block?.nodes.some(({ fault }) => fault !== undefined)) return true;
  return shown.every((part) => !hasPicture(part)) && plainText({ children: shown }).trim() === '';
}

function hasPicture(part: ElementContent): boolean {
  if (part.type !== 'element') return false;
  return part.tagName === 'svg' || part.tagName === 'img' || part.children.some(hasPicture);
}

/** What stands in the author's file, as a pipeline without this plugin shows it. */
export function sourceOfBlock({ kind, place }: Block, text: string): Element {
  const written = text.slice(place.start.offset, place.end.offset);
  const content = written.replace(/^[^\n]*\n/, '').replace(/\n[^\n]*$/, '\n');
  const properties = { className: [`language-${kind}`] };
  const code: Element = {
    type: 'element',
    tagName: 'code',
    properties,
    children: [{ type: 'text', value: content }],
  };
  return { type: 'element', tagName: 'pre', properties: {}, children: [code] };
}
