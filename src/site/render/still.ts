import type { Element, ElementContent, Root, RootContent } from 'hast';
import { element, text } from './hast.ts';

/** What only a page's script, its style sheet or a click makes use of. */
const forPages = /^data(?!Footnote)|^(?:loading|ariaDescribedBy)$/;

/**
 * A chapter as the pages have it becomes one that only shows: no move is a link to a board, nothing
 * is folded, nothing stands twice. Ids stay, so that other chapters can point here.
 */
export function makeStill(tree: Root): Root {
  return {
    ...tree,
    children: tree.children.flatMap((node): RootContent[] =>
      node.type === 'element' ? still(node) : [node],
    ),
  };
}

function still(node: Element): ElementContent[] {
  const is = (name: string) => [node.properties.className].flat().includes(name);
  // Links to picture files; the answers stand at the end.
  if (is('pictures') || (node.tagName === 'details' && is('answer'))) return [];
  const children = node.children.flatMap((child) =>
    child.type === 'element' ? still(child) : [child],
  );
  if (is('places')) return [inOneParagraph(children)];
  if (node.tagName === 'details') return children;
  if (node.tagName === 'summary') return [element('p', { className: ['fold'] }, children)];
  if (is('answers-title')) return [element('h2', node.properties, children)];
  const properties = Object.fromEntries(
    Object.entries(node.properties).filter(([name]) => !forPages.test(name)),
  );
  if (node.tagName === 'a' && is('move')) {
    const { href: _, ...rest } = properties;
    return [{ ...node, tagName: 'span', properties: rest, children }];
  }
  if (node.tagName === 'a' && is('still')) {
    return [element('div', { className: ['still'] }, children)];
  }
  // The style sheet draws what stands for these letters and signs: here they stand for themselves.
  if (is('figurine')) return children;
  if (is('drawn')) {
    const sign = is('slight-white') ? ['+/='] : is('slight-black') ? ['=/+'] : children;
    return [element('span', { ...properties, className: ['glyph'] }, sign)];
  }
  if (properties.role === 'list') delete properties.role;
  return [{ ...node, properties, children }];
}

/** A list of places, one a line, as words: nobody clicks through them. */
function inOneParagraph(children: readonly ElementContent[]): Element {
  const [lead, list] = children.filter((child) => child.type === 'element');
  const items = list?.children.filter((child) => child.type === 'element') ?? [];
  const words = items.flatMap(({ children: [link, move] }, index): ElementContent[] => {
    // The author's name for a position says nothing here: its move does.
    const shown = link?.type === 'element' && move?.type === 'text';
    const place = shown ? { ...link, children: [text(move.value.trim())] } : link;
    return [text(index === 0 ? ' ' : ', '), ...(place === undefined ? [] : [place])];
  });
  return element('p', { className: ['places'] }, [...(lead?.children ?? []), ...words, '.']);
}
