import type { Element, ElementContent, ElementData, Properties, Text } from 'hast';
import type { LinkKind, Target } from './document.ts';

export function text(value: string): Text {
  return { type: 'text', value };
}

export function element(
  tagName: string,
  properties: Properties,
  children: readonly (ElementContent | string)[],
  data?: ElementData,
): Element {
  return {
    type: 'element',
    tagName,
    properties,
    children: children.map((child) => (typeof child === 'string' ? text(child) : child)),
    ...(data && { data }),
  };
}

const classOf: Readonly<Record<LinkKind, string | undefined>> = {
  move: 'prose-move',
  position: 'position-link',
  'position-words': 'position-link',
  words: undefined,
};

/** A link without an address, which the medium adds. */
export function linkTo(
  target: Target,
  kind: LinkKind,
  children: readonly (ElementContent | string)[],
  properties: Properties = {},
): Element {
  const className = classOf[kind];
  const looks = className === undefined ? {} : { className: [className] };
  return element('a', { ...looks, ...properties }, children, { target, link: kind });
}
