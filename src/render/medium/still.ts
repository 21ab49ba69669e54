import type { Element, ElementContent, Properties } from 'hast';
import { element, text } from '../hast.ts';
import { remembered } from '../remembered.ts';

/** Properties that only a page's script or style sheet uses. */
const isForPages = remembered((name) =>
  /^data(?!Footnote)|^(?:loading|ariaDescribedBy)$/.test(name),
);

/**
 * Makes an element static: moves are no links to boards, and nothing is folded or repeated. Ids stay, so that other
 * chapters can link here. Does not change the element, which all media share.
 * @param children its children, already static.
 */
export function still(node: Element, children: ElementContent[]): ElementContent[] {
  const { data = {} } = node;
  switch (data.role) {
    // Static media have no links to picture files, and answers at the end.
    case 'pictures':
    case 'answer':
      return [];
    case 'answers-title':
      return [element('h2', { ...node.properties }, children, data)];
    case 'show':
      return [element('div', { className: ['still'] }, children)];
    // Without the style sheet these letters and signs stand for themselves.
    case 'figurine':
    case 'mention':
      return children;
    case 'sign': {
      const shown = data.plain === undefined ? children : [text(data.plain)];
      return [element('span', { ...shownProperties(node), className: ['glyph'] }, shown)];
    }
    case 'move':
      return [{ ...node, tagName: 'span', properties: shownProperties(node), children }];
  }
  if (node.tagName === 'details') return children;
  if (node.tagName === 'summary') return [element('p', { className: ['fold'] }, children)];
  const properties = shownProperties(node);
  if (properties.role === 'list') delete properties.role;
  // Without the page's script this element is only a box around its board.
  const tagName = node.tagName === 'course-board' ? 'div' : node.tagName;
  return [{ ...node, tagName, properties, children }];
}

function shownProperties({ properties }: Element): Properties {
  const shown: Properties = {};
  for (const name in properties) if (!isForPages(name)) shown[name] = properties[name];
  return shown;
}
