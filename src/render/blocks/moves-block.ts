import type { Element, ElementContent, Properties } from 'hast';
import type { PhrasingContent } from 'mdast';
import { toString as plainText } from 'mdast-util-to-string';
import { chapterIds } from '../../addresses/index.ts';
import { dataProperties } from '../../contract/index.ts';
import type { MoveNode, MovesBlock, VariationNode } from '../../model/index.ts';
import { namedInWords, type RenderContext } from '../context.ts';
import { element, linkTo, text } from '../hast.ts';
import { meetingsOf } from './meetings.ts';
import { boardData, moveLink } from './move-link.ts';
import { type MoveToken, moveTokens, type Siblings } from './move-tokens.ts';
import type { MoveTree } from './move-tree.ts';

/** The most variations of a move that stay in its sentence, if all are short and flat. */
const mostInSentence = 2;
const shortPlies = 4;
const shortComments = 50;
/** In characters: after a longer comment the moves begin a new paragraph. */
const paragraphComment = 90;
const noBreak = '\u00a0';
/** The deepest list: below it, variations stay in their paragraph, so that the HTML is not nested too deep. */
const deepestList = 20;

/** Turns a comment's Markdown into HTML. */
export type RenderComment = (content: readonly PhrasingContent[]) => ElementContent[];

/**
 * The text being set: a paragraph of a line, or brackets within one. `list` has the variations set since the last
 * paragraph.
 */
interface Level {
  readonly home: Element;
  readonly inline: boolean;
  /** The letter of its variation, such as `b1`; empty for the main line. */
  readonly name: string;
  /** How many variations within it have been set in lists. */
  told: number;
  /** The element that its first paragraph will begin with. */
  sign: Element | undefined;
  paragraph: Element | undefined;
  list: Element | undefined;
  /** Whether a move of Black needs its number next, since something stands between it and White's move. */
  interrupted: boolean;
  /** Whether the next move begins a new paragraph. */
  rested: boolean;
}

/** A block as running text. */
export function renderMoves(
  context: RenderContext,
  block: MovesBlock,
  renderComment: RenderComment,
): Element {
  const ids = chapterIds(context.chapter);
  const idOf = (node: MoveNode) => ids.ofNode(block, node.index);
  const meetings = meetingsOf(context, block.nodes);
  const tree = { ...block, idOf, meetings };
  return setMoves(context, tree, renderComment, fromLine(context, block));
}

/**
 * Sets moves as running text: the main line in sentences, short variations in brackets within them, longer and nested
 * ones as list items below.
 */
export function setMoves(
  context: RenderContext,
  tree: MoveTree,
  renderComment: RenderComment,
  before: readonly Element[] = [],
): Element {
  const home = element('div', treeProperties(tree), before, { role: 'moves' });
  const levels: Level[] = [newLevel(home, false, '')];
  for (const token of moveTokens(tree.nodes)) {
    const level = levels.at(-1);
    if (level === undefined) break;
    switch (token.kind) {
      case 'move': {
        const paragraph = paragraphFor(level, level.rested);
        level.rested = false;
        const white = token.node.move?.color !== 'black';
        separate(paragraph);
        paragraph.children.push(...moveLink(context, tree, token.node, white || level.interrupted));
        level.interrupted = false;
        if (token.node.index === tree.leadsTo) {
          paragraph.properties.className = ['lead'];
          level.interrupted = true;
          level.rested = true;
        }
        break;
      }
      case 'comment': {
        const html = renderComment(token.comment.content);
        if (html.length === 0) break;
        const paragraph = paragraphFor(level, false);
        separate(paragraph);
        for (const node of html) paragraph.children.push(node);
        level.interrupted = true;
        const length = plainText(token.comment.content).length;
        level.rested = !level.inline && levels.length === 1 && length >= paragraphComment;
        break;
      }
      case 'open':
        levels.push(openVariation(tree, token, level, levels.length));
        break;
      case 'close': {
        levels.pop();
        if (level.inline) level.home.children.push(text(')'));
        const outer = levels.at(-1);
        if (outer !== undefined) outer.interrupted = true;
      }
    }
  }
  if (tree.result !== undefined && tree.result !== '*') {
    const [outermost] = levels;
    const paragraph = outermost && paragraphFor(outermost, false);
    paragraph?.children.push(text(' '), element('span', { className: ['result'] }, [tree.result]));
  }
  return home;
}

function treeProperties({ nodes, view, line, idOf }: MoveTree): Properties {
  const classes = line === undefined ? ['moves'] : ['moves', `${line}-line`];
  const [start] = nodes;
  if (idOf === undefined) return { className: classes };
  const first = nodes[1]?.move;
  const id = start && idOf(start);
  return {
    className: classes,
    ...(id !== undefined && { id }),
    ...dataProperties('moves', {
      ...(start && id !== undefined && boardData(start, id)),
      view,
      line,
      start: first === undefined ? '1w' : `${first.number}${first.color === 'white' ? 'w' : 'b'}`,
    }),
  };
}

/** `From: after 7...Be7`, for a block that starts from a named position. */
function fromLine({ ask, chapter, strings }: RenderContext, block: MovesBlock) {
  const named = block.from && ask('label', block.from.name);
  if (!named) return [];
  const words = namedInWords(ask, named, strings, chapter.file);
  const link = linkTo({ to: 'place', ref: named.ref }, 'position', [words]);
  return [element('p', { className: ['from'] }, [`${strings.startsFrom} `, link])];
}

function newLevel(home: Element, inline: boolean, name: string): Level {
  return {
    home,
    inline,
    name,
    told: 0,
    sign: undefined,
    paragraph: inline ? home : undefined,
    list: undefined,
    interrupted: true,
    rested: false,
  };
}

function paragraphFor(level: Level, fresh: boolean): Element {
  if (level.paragraph === undefined || fresh) {
    const sign = level.sign === undefined ? [] : [level.sign, text(noBreak)];
    level.sign = undefined;
    level.paragraph = element('p', {}, sign);
    level.home.children.push(level.paragraph);
    level.list = undefined;
  }
  return level.paragraph;
}

function openVariation(
  { nodes }: MoveTree,
  { variation, siblings }: Extract<MoveToken, { kind: 'open' }>,
  level: Level,
  depth: number,
): Level {
  if (level.inline || depth > deepestList || areShort(nodes, siblings)) {
    const brackets = element('span', { className: ['variation'] }, ['('], { role: 'variation' });
    const paragraph = paragraphFor(level, false);
    separate(paragraph);
    // Nested brackets are siblings: only a variation in a paragraph gets a span.
    if (!level.inline) paragraph.children.push(brackets);
    else paragraph.children.push(text('('));
    return newLevel(level.inline ? level.home : brackets, true, level.name);
  }
  level.list ??= element('ul', { className: ['variations'], role: 'list' }, [], {
    role: 'variations',
  });
  if (level.home.children.at(-1) !== level.list) level.home.children.push(level.list);
  level.paragraph = undefined;
  const item = element('li', {}, []);
  level.list.children.push(item);
  // Names begin anew with each move of the main line; within a variation each is unique.
  if (level.name === '') level.told = siblings.indexOf(variation);
  const name = level.name + signOf(level.told, level.name);
  level.told += 1;
  const sign = element('span', { className: ['letter'] }, [`${name})`]);
  return { ...newLevel(item, false, name), sign };
}

/** `a`, `b`, … of those beside a main line; within `b` they are `b1`, `b2`, within `b1` again `b1a`. */
function signOf(index: number, around: string): string {
  if (/[a-z]$/.test(around)) return String(index + 1);
  const letter = String.fromCharCode(97 + (index % 26));
  return letter.repeat(1 + Math.floor(index / 26));
}

function areShort(nodes: readonly MoveNode[], siblings: Siblings): boolean {
  return siblings.length <= mostInSentence && siblings.every((each) => isShort(nodes, each));
}

function isShort(nodes: readonly MoveNode[], variation: VariationNode): boolean {
  let comments = variation.before.map((comment) => plainText(comment.content)).join('').length;
  let plies = 0;
  let node = nodes[variation.first];
  while (node !== undefined) {
    plies += 1;
    for (const item of node.after) {
      if (item.type === 'variation') return false;
      comments += plainText(item.content).length;
    }
    if (plies > shortPlies || comments > shortComments) return false;
    const [next] = node.children;
    node = next === undefined ? undefined : nodes[next];
  }
  return true;
}

/** Adds a space, except at the start and after an opening bracket. */
function separate(paragraph: Element): void {
  const last = paragraph.children.at(-1);
  if (last === undefined) return;
  if (last.type === 'text' && /[\s(]$/.test(last.value)) return;
  paragraph.children.push(text(' '));
}
