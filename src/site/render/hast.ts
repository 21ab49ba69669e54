import type { Element, ElementContent, Properties, Text } from 'hast';

export function text(value: string): Text {
  return { type: 'text', value };
}

export function element(
  tagName: string,
  properties: Properties,
  children: readonly (ElementContent | string)[],
): Element {
  return {
    type: 'element',
    tagName,
    properties,
    children: children.map((child) => (typeof child === 'string' ? text(child) : child)),
  };
}
