import type { Element, ElementContent, Root, RootContent } from 'hast';
import { toString as plainText } from 'mdast-util-to-string';
import { dataProperties } from '../../../contract/index.ts';
import { element, type Target, text } from '../../../render/index.ts';
import type { PlaceOnPaper } from './places.ts';

/** How to fit a chapter's tree into one page with all others. */
export interface Fit {
  /** The id that an id of the chapter's own page gets. */
  readonly id: (id: string) => string;
  /** Where a link leads, in words, where they help on paper. */
  readonly place: (target: Target, words: string) => PlaceOnPaper | undefined;
}

/** Makes a still chapter a part of the handout: its headings go down by one. Changes the tree. */
export function fitForPaper(tree: Root, fit: Fit): void {
  tree.children = fitAll(tree.children, fit);
}

function fitAll<Kind extends RootContent | ElementContent>(
  nodes: readonly Kind[],
  fit: Fit,
): (Kind | ElementContent)[] {
  const fitted: (Kind | ElementContent)[] = [];
  for (const node of nodes) {
    if (node.type === 'text' && node.value.includes('O-O')) {
      fitted.push(...joinCastling(node.value));
      continue;
    }
    fitted.push(node);
    const place = node.type === 'element' ? fitElement(node, fit) : undefined;
    if (place === undefined) continue;
    const data = dataProperties('place', { diagram: place.diagram });
    fitted.push(element('span', { className: ['place'], ...data }, [` (${place.words})`]));
  }
  return fitted;
}

/** @returns where it leads, if that is told behind it. */
function fitElement(node: Element, fit: Fit): PlaceOnPaper | undefined {
  const { properties, data: { role, link, target } = {} } = node;
  // A move says itself where it stands, and so does the sign of a note.
  const telling = target !== undefined && target.to !== 'note' && link !== 'move';
  const place = telling ? fit.place(target, plainText(node)) : undefined;
  for (const name of ['id', 'ariaDescribedBy', 'ariaLabelledBy']) {
    const id = properties[name];
    if (typeof id === 'string') properties[name] = fit.id(id);
  }
  // On one page the exercises of all chapters would be landmarks of one name.
  if (role === 'exercise') delete properties.ariaLabel;
  node.tagName = fitTag(node.tagName);
  node.children = fitAll(node.children, fit);
  return place;
}

/** Lines of a narrow column would break behind the hyphen. */
function joinCastling(words: string): ElementContent[] {
  return words
    .split(/(O-O(?:-O)?)/)
    .filter((part) => part !== '')
    .map((part) =>
      part.startsWith('O-O') ? element('span', { className: ['joined'] }, [part]) : text(part),
    );
}

function fitTag(name: string): string {
  // The page's script would make it live.
  if (name === 'course-board') return 'div';
  const [, level] = /^h([2-5])$/.exec(name) ?? [];
  return level === undefined ? name : `h${Number(level) + 1}`;
}
