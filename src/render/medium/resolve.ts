import type { Element, ElementContent, Properties, Root, RootContent } from 'hast';
import type { Strings } from '../../strings/index.ts';
import { element, text } from '../hast.ts';
import { replaceWhere } from '../replace-where.ts';
import { lastBoardFigure } from './last-board.ts';
import type { Medium } from './medium.ts';
import { foldedPlaces, toldPlaces } from './places.ts';
import { still } from './still.ts';
import { writeHtml } from './write-html.ts';

/** Resolves a document for a medium: HTML with addresses and pictures. Does not change the document. */
export function resolve(tree: Root, medium: Medium, strings: Strings): Root {
  return { ...tree, children: [...resolveAll(tree.children, medium, strings)] };
}

/** @returns the list itself where nothing in it changes. */
export function resolveAll<Node extends RootContent | ElementContent>(
  nodes: readonly Node[],
  medium: Medium,
  strings: Strings,
): readonly (Node | ElementContent)[] {
  const shown = medium.showsLastBoards ? nodes : withoutLastBoards(nodes);
  return replaceWhere(shown, (node) => resolveNode(node, medium, strings));
}

function resolveNode<Node extends RootContent | ElementContent>(
  node: Node,
  medium: Medium,
  strings: Strings,
): Node | ElementContent | readonly ElementContent[] {
  switch (node.type) {
    case 'board':
      return medium.board(node.picture);
    case 'diagramNumber': {
      if (!medium.numbersDiagrams) return [];
      const number = strings.handout.diagramNumber(node.number);
      return [element('span', { className: ['diagram-number'] }, [number]), text(' ')];
    }
    case 'lastBoard':
      return lastBoardFigure(node, medium.board, strings);
    case 'places': {
      const places = medium.isLive ? foldedPlaces(node, strings) : toldPlaces(node, strings);
      return resolveAll(places, medium, strings);
    }
    case 'fixed': {
      if (!medium.isWritten) return resolveAll(node.children, medium, strings);
      node.html ??= writeHtml(node.children);
      return { type: 'raw', value: node.html };
    }
    case 'element':
      return resolveElement(node, medium, strings);
    default:
      return node;
  }
}

/** Removes last boards, and the line end before each. */
function withoutLastBoards<Node extends RootContent | ElementContent>(
  nodes: readonly Node[],
): readonly Node[] {
  if (!nodes.some(({ type }) => type === 'lastBoard')) return nodes;
  return nodes.filter((node, index) => {
    const isLineEnd = node.type === 'text' && node.value === '\n';
    return node.type !== 'lastBoard' && !(isLineEnd && nodes[index + 1]?.type === 'lastBoard');
  });
}

function resolveElement(
  node: Element,
  medium: Medium,
  strings: Strings,
): Element | readonly ElementContent[] {
  const { role, target, meetings } = node.data ?? {};
  const resolved = resolveAll(node.children, medium, strings) as ElementContent[];
  const isSame = resolved === node.children;
  if (isSame && medium.isLive && medium.isWritten && !target && !meetings) return node;
  // Copied, since a medium may change its tree and the document is shared.
  const children = isSame ? [...resolved] : resolved;
  if (!medium.isLive && !(medium.drawsSigns && role === 'sign')) {
    return still(node, children).map((each) => addressed(each, medium));
  }
  const made = { ...node, properties: { ...node.properties }, children };
  const isPlayed = role === 'move' && node.tagName === 'a';
  return isPlayed ? playable(made, medium) : addressed(made, medium);
}

/**
 * A move on a page, with the data for the board. The page's script makes it a link to itself
 * (`browser/link-moves.ts`): without scripts there is no board that it could lead to.
 */
function playable(node: Element, { addressOf }: Medium): Element {
  const { meetings = [] } = node.data ?? {};
  if (meetings.length === 0) return node;
  const also = meetings.map(({ ref, move }) => `${addressOf({ to: 'place', ref })} ${move}`);
  return { ...node, properties: { ...node.properties, dataAlso: also.join(' ') } };
}

/** Gives a link its address; without one it becomes text. */
function addressed<Node extends ElementContent>(node: Node, { addressOf }: Medium): Node {
  if (node.type !== 'element' || node.data?.target === undefined) return node;
  const href = addressOf(node.data.target);
  if (href === undefined) return { ...node, tagName: 'span' };
  const { className, ...rest } = node.properties;
  const looks: Properties = className === undefined ? {} : { className };
  return { ...node, properties: { ...looks, href, ...rest } };
}
