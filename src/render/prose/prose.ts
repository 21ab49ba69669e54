import type { Element, ElementContent, Properties } from 'hast';
import type {
  Heading,
  Image,
  Link,
  ListItem,
  Nodes,
  Paragraph,
  Parents,
  PhrasingContent,
} from 'mdast';
import { defaultHandlers, type Handlers, type State } from 'mdast-util-to-hast';
import { chapterIds } from '../../addresses/index.ts';
import { dataProperties } from '../../contract/index.ts';
import {
  type Block,
  type BlockNode,
  type Chapter,
  type CourseLinkNode,
  type DirectiveNode,
  fileAddress,
  movesSpokenOf,
  type NodeRef,
  type PositionLinkNode,
  type ProseMovesNode,
  speaksOf,
} from '../../model/index.ts';
import type { PositionNamed } from '../ask/questions.ts';
import { renderDiagram } from '../blocks/diagram.ts';
import { renderExercise } from '../blocks/exercise.ts';
import { type AnswersNode, renderAnswers } from '../blocks/exercise-answers.ts';
import { renderGame } from '../blocks/game.ts';
import { type RenderComment, renderMoves } from '../blocks/moves-block.ts';
import { renderPattern } from '../blocks/pattern.ts';
import { positionInWords, type RenderContext } from '../context.ts';
import type { LinkKind } from '../document.ts';
import { element, linkTo, text } from '../hast.ts';
import { lastBoard } from '../medium/last-board.ts';
import { type Notation, sanHtml } from '../notation.ts';
import { withPlaces } from '../written-at.ts';
import { renderDirective } from './directives.ts';
import { targetOf } from './links.ts';
import { tidySpaces } from './tidy-spaces.ts';

/**
 * Handlers that turn the nodes of the course language, and Markdown nodes that we print in our own way, into a
 * document.
 */
export function proseHandlers(context: RenderContext, headingShift: number): Handlers {
  return withPlaces({
    text: defaultHandlers.text,
    ...courseHandlers(context),
    ...markdownHandlers(context, headingShift),
  });
}

function courseHandlers(context: RenderContext): Handlers {
  const { chapter, notation } = context;
  return {
    courseAnswers: (state, node: AnswersNode) => renderAnswers(context, node, phrasingOf(state)),
    courseBlock(state, node: BlockNode) {
      const block = chapter.blocks[node.block];
      return block && renderBlock(context, block, phrasingOf(state));
    },
    courseDirective: (_state, node: DirectiveNode, parent: Parents | undefined) =>
      renderDirective(context, node, parent?.children ?? []),
    positionLink(state, node: PositionLinkNode) {
      const named = context.ask('label', node.label);
      const words = state.all(node);
      if (words.length > 0) return toPlace(named?.ref, 'position-words', words);
      return toPlace(named?.ref, 'position', unspoken(context, named));
    },
    courseLink(state, node: CourseLinkNode) {
      const place = context.ask('sibling', `${node.course}/${node.label}`);
      const words = state.all(node);
      const shown = words.length > 0 ? words : [text(place?.title ?? place?.course ?? node.course)];
      const { beside, web } = place ?? {};
      if (beside === undefined && web === undefined) return element('span', {}, shown);
      const ways = { ...(beside !== undefined && { beside }), ...(web !== undefined && { web }) };
      return linkTo({ to: 'course', ...ways }, 'words', shown);
    },
    proseMoves(_state, node: ProseMovesNode) {
      const targets = movesSpokenOf(chapter, node);
      return node.moves.flatMap(({ text: written }, index) => [
        ...(index === 0 ? [] : [text(' ')]),
        toPlace(targets[index], 'move', proseMove(written, notation)),
      ]);
    },
  };
}

function renderBlock(context: RenderContext, block: Block, renderText: RenderComment) {
  const { chapter, strings } = context;
  switch (block.kind) {
    case 'moves':
      return [renderMoves(context, block, renderText), ...lastBoard(chapter, block, strings)];
    case 'diagram':
      return renderDiagram(context, block, renderText);
    case 'exercise':
      return renderExercise(context, block, renderText);
    case 'game':
      return [renderGame(context, block, renderText), ...lastBoard(chapter, block, strings)];
    case 'pattern':
      return renderPattern(context, block, {
        id: chapterIds(chapter).ofNode(block, 0),
        here: chapter.file,
        text: renderText(block.text),
      });
  }
}

function markdownHandlers(context: RenderContext, headingShift: number): Handlers {
  const { chapter } = context;
  /** The node that a directive in prose speaks of: the board shows it while the text is read. */
  const shows = (node: PhrasingContent): NodeRef | undefined =>
    node.type === 'courseDirective' ? speaksOf(chapter, node) : undefined;
  return {
    paragraph(state, node: Paragraph) {
      const ref = node.children.map(shows).find((each) => each !== undefined);
      const content = state.all({ ...node, children: tidySpaces(node.children) });
      return content.length === 0 ? undefined : element('p', spokenOf(ref, chapter), content);
    },
    heading(state, node: Heading) {
      const id = chapterIds(chapter).ofHeading(node);
      return element(`h${Math.min(6, node.depth + headingShift)}`, { id }, state.all(node));
    },
    link(state, node: Link) {
      const target = targetOf(context, node.url);
      const title = node.title ? { title: node.title } : {};
      return target === undefined
        ? element('span', title, state.all(node))
        : linkTo(target, 'words', state.all(node), title);
    },
    image(_state: State, node: Image): Element {
      const title = node.title ? { title: node.title } : {};
      const src = fileAddress(node.url);
      return element('img', { src, alt: node.alt ?? '', ...title, loading: 'lazy' }, []);
    },
    listItem: (state, node, parent) =>
      defaultHandlers.listItem(state, node, parent && looksOf(parent)),
    table(state, node) {
      return element('div', { className: ['table'] }, [defaultHandlers.table(state, node)], {
        role: 'table',
      });
    },
  };
}

function phrasingOf(state: State): RenderComment {
  return (content) => state.all({ type: 'paragraph', children: tidySpaces(content) });
}

/** The words of a link without words: the title of its position, else where it occurs. */
function unspoken({ ask, chapter, strings }: RenderContext, named: PositionNamed | null) {
  if (named === null) return [];
  return [text(named.title ?? positionInWords(ask, named.ref, strings, chapter.file))];
}

function toPlace(
  ref: NodeRef | null | undefined,
  kind: LinkKind,
  content: readonly ElementContent[],
): Element {
  return ref ? linkTo({ to: 'place', ref }, kind, content) : element('span', {}, content);
}

/** The attributes of a paragraph that tell the board which node of this chapter it speaks of. */
function spokenOf(ref: NodeRef | undefined, chapter: Chapter): Properties {
  const isHere = ref?.chapter === chapter.file;
  const at = isHere ? chapterIds(chapter).ofNode({ key: ref.block }, ref.node) : undefined;
  return dataProperties('text', { at });
}

function proseMove(written: string, notation: Notation): ElementContent[] {
  const [, number = '', san = written] = /^(\d+\.+\s*)?(.*)$/s.exec(written) ?? [];
  return [text(number.trimEnd()), ...sanHtml(san, notation)].filter(
    (part) => part.type !== 'text' || part.value !== '',
  );
}

const looks = new WeakMap<Nodes, Nodes>();

/**
 * Stores in a list whether its items are spread. The library's handler of an item would otherwise look through all
 * items of the list for each.
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
