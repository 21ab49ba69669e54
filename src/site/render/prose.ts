import type { Element, ElementContent } from 'hast';
import type { Heading, Image, Link, ListItem, Nodes, Paragraph, PhrasingContent } from 'mdast';
import { defaultHandlers, type Handlers, type State } from 'mdast-util-to-hast';
import { chapterIds } from '../../addresses/index.ts';
import { dataProperties } from '../../contract/attributes.ts';
import { fileAddress, movesSpokenOf, speaksOf } from '../../model/index.ts';
import type {
  BlockNode,
  DirectiveNode,
  GameBlock,
  MovesBlock,
  NodeRef,
  PositionLinkNode,
  ProseMovesNode,
} from '../../model/types.ts';
import type { RenderContext } from './context.ts';
import { renderDiagram } from './diagram.ts';
import { renderDirective } from './directives.ts';
import { renderExercise } from './exercise.ts';
import { type AnswersNode, renderAnswers } from './exercise-answers.ts';
import { renderGame } from './game.ts';
import { element, text } from './hast.ts';
import { siteHref } from './links.ts';
import { renderMoves } from './moves-block.ts';
import { sanHtml } from './notation.ts';
import { renderPattern } from './pattern.ts';
import { tidySpaces } from './tidy-spaces.ts';

/** How the nodes of the course language, and those that the site prints in its own way, become HTML. */
export function proseHandlers(context: RenderContext, headingShift: number): Handlers {
  const { chapter, addresses, notation } = context;
  const toPosition = (
    ref: NodeRef | undefined,
    className: string,
    content: ElementContent[],
  ): Element =>
    ref === undefined
      ? element('span', {}, content)
      : element('a', { className: [className], href: addresses.href(ref, chapter.file) }, content);

  const phrasingOf = (state: State) => (content: readonly PhrasingContent[]) =>
    state.all({ type: 'paragraph', children: tidySpaces(content) });

  const below = (block: MovesBlock | GameBlock) => context.medium.below?.(block) ?? [];

  return {
    courseAnswers: (state, node: AnswersNode) => renderAnswers(context, node, phrasingOf(state)),
    courseBlock(state, node: BlockNode) {
      const block = chapter.blocks[node.block];
      const phrasing = phrasingOf(state);
      switch (block?.kind) {
        case 'moves':
          return [renderMoves(context, block, phrasing), ...below(block)];
        case 'diagram':
          return renderDiagram(context, block, phrasing);
        case 'exercise':
          return renderExercise(context, block, phrasing);
        case 'game':
          return [renderGame(context, block, phrasing), ...below(block)];
        case 'pattern':
          return renderPattern(context, block, chapterIds(chapter).ofNode(block, 0), chapter.file);
        default:
          return undefined;
      }
    },
    courseDirective: (_state, node: DirectiveNode) => renderDirective(context, node),
    positionLink(state, node: PositionLinkNode) {
      const target = context.course.labels[node.label]?.ref;
      return toPosition(target, 'position-link', state.all(node));
    },
    proseMoves(_state, node: ProseMovesNode) {
      const targets = movesSpokenOf(chapter, node);
      return node.moves.flatMap(({ text: written }, index) => [
        ...(index === 0 ? [] : [text(' ')]),
        toPosition(targets[index], 'prose-move', proseMove(written)),
      ]);
    },
    paragraph(state, node: Paragraph) {
      const at = node.children.map(shows).find((ref) => ref !== undefined);
      const here = dataProperties('text', {
        at: at?.chapter === chapter.file ? addresses.id(at) : undefined,
      });
      const content = state.all({ ...node, children: tidySpaces(node.children) });
      return content.length === 0 ? undefined : element('p', here, content);
    },
    heading(state, node: Heading) {
      const id = chapterIds(chapter).ofHeading(node);
      return element(`h${Math.min(6, node.depth + headingShift)}`, { id }, state.all(node));
    },
    link(state, node: Link) {
      const href = siteHref(context, node.url);
      const title = node.title ? { title: node.title } : {};
      return element(href === undefined ? 'span' : 'a', { href, ...title }, state.all(node));
    },
    image(_state: State, node: Image): Element {
      return element(
        'img',
        {
          src: fileAddress(node.url),
          alt: node.alt ?? '',
          ...(node.title ? { title: node.title } : {}),
          loading: 'lazy',
        },
        [],
      );
    },
    listItem: (state, node, parent) =>
      defaultHandlers.listItem(state, node, parent && looksOf(parent)),
    table(state, node) {
      return element('div', { className: ['table'] }, [defaultHandlers.table(state, node)]);
    },
  };

  /** The position that a directive in prose speaks of: the board shows it while it is read. */
  function shows(node: PhrasingContent): NodeRef | undefined {
    return node.type === 'courseDirective' ? speaksOf(chapter, node) : undefined;
  }

  function proseMove(written: string): ElementContent[] {
    const [, number = '', san = written] = /^(\d+\.+\s*)?(.*)$/s.exec(written) ?? [];
    return [text(number.trimEnd()), ...sanHtml(san, notation)].filter(
      (part) => part.type !== 'text' || part.value !== '',
    );
  }
}

const looks = new WeakMap<Nodes, Nodes>();

/**
 * A list that says of itself whether its items stand apart. The handler of an item asks for nothing
 * else of its list, and would look through all items of it for each.
 */
function looksOf<Parent extends Nodes>(list: Parent): Parent {
  if (list.type !== 'list') return list;
  const known = looks.get(list);
  if (known) return known as Parent;
  const spread =
    (list.spread ?? false) || list.children.some((item) => item.spread ?? isApart(item));
  const found = { ...list, spread, children: [] };
  looks.set(list, found);
  return found;
}

function isApart(item: ListItem): boolean {
  return item.children.length > 1;
}
