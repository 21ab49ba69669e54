import type { Element, ElementContent, Properties, Root, RootContent } from 'hast';
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

/** Makes a still chapter a part of the handout: its headings go down by one. */
export function fitForPaper(tree: Root, fit: Fit): Root {
  return { ...tree, children: tree.children.flatMap((node): RootContent[] => fitNode(node, fit)) };
}

function fitNode<Kind extends RootContent | ElementContent>(
  node: Kind,
  fit: Fit,
): (Kind | ElementContent)[] {
  if (node.type === 'text') return joinCastling(node.value);
  if (node.type !== 'element') return [node];
  const { role, link, target } = node.data ?? {};
  const children = node.children.flatMap((child) => fitNode(child, fit) as ElementContent[]);
  const properties: Properties = { ...node.properties };
  for (const name of ['id', 'ariaDescribedBy', 'ariaLabelledBy']) {
    const id = properties[name];
    if (typeof id === 'string') properties[name] = fit.id(id);
  }
  // On one page the exercises of all chapters would be landmarks of one name.
  if (role === 'exercise') delete properties.ariaLabel;
  // A move says itself where it stands, and so does the sign of a note.
  const telling = target !== undefined && target.to !== 'note' && link !== 'move';
  const place = telling ? fit.place(target, plainText(node)) : undefined;
  const told =
    place === undefined
      ? []
      : [
          element(
            'span',
            { className: ['place'], ...dataProperties('place', { diagram: place.diagram }) },
            [` (${place.words})`],
          ),
        ];
  return [{ ...(node as Element), tagName: fitTag(node.tagName), properties, children }, ...told];
}

/** Lines of a narrow column would break behind the hyphen. */
function joinCastling(words: string): ElementContent[] {
  if (words !== '' && !words.includes('O-O')) return [text(words)];
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
