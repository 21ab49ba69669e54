import type { Element, ElementContent, Properties } from 'hast';
import { element, text } from '../hast.ts';
import { remembered } from '../remembered.ts';

/** What only a page's script, its style sheet or a click makes use of. */
const isForPages = remembered((name) =>
  /^data(?!Footnote)|^(?:loading|ariaDescribedBy)$/.test(name),
);

/**
 * An element that only shows: no move is a link to a board, nothing is folded, nothing stands twice. Ids
 * stay, so that other chapters can point here. The element itself, which all media share, stays as it was.
 * @param children of it, still already.
 */
export function still(node: Element, children: ElementContent[]): ElementContent[] {
  const { data = {} } = node;
  switch (data.role) {
    // Links to picture files; the answers stand at the end.
    case 'pictures':
    case 'answer':
      return [];
    case 'answers-title':
      return [element('h2', { ...node.properties }, children, data)];
    case 'show':
      return [element('div', { className: ['still'] }, children)];
    // The style sheet draws what stands for these letters and signs: here they stand for themselves.
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
  // Comes alive by a page's script; without one it is a box around its board.
  const tagName = node.tagName === 'course-board' ? 'div' : node.tagName;
  return [{ ...node, tagName, properties, children }];
}

function shownProperties({ properties }: Element): Properties {
  const shown: Properties = {};
  for (const name in properties) if (!isForPages(name)) shown[name] = properties[name];
  return shown;
}
