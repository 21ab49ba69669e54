import type { PhrasingContent, RootContent } from 'mdast';
import {
  type CourseSettings,
  type DirectiveNode,
  type PositionLinkNode,
  readJudgement,
} from '../../model/index.ts';
import { type Ask, namedInWords, positionInWords, referenceWords } from '../../render/index.ts';
import { stringsFor } from '../../strings/index.ts';

type TextNode = RootContent | PhrasingContent;

/** What an author's text is read with when it becomes plain words. */
export interface WordsContext {
  readonly ask: Ask;
  readonly settings: CourseSettings;
  /** The file of the chapter that the text stands in. */
  readonly chapter: string;
}

/**
 * Text as plain words with single spaces, as a PGN comment holds it. Directives say what a reader
 * of the site reads; marks and arrows, which only its boards show, are told in words, since PGN has
 * no form for them. Claims have been proved and say nothing; addresses on the web follow their words.
 */
export function plainWords(nodes: readonly TextNode[], context: WordsContext): string {
  return nodes
    .map((node) => wordsOf(node, context, nodes))
    .join('')
    .replace(untidySpace, ' ')
    .trim();
}

/** All but a single space, which is nearly all white space that there is. */
const untidySpace = /\s{2,}|[^\S ]/g;

function wordsOf(node: TextNode, context: WordsContext, among: readonly TextNode[]): string {
  switch (node.type) {
    case 'text':
    case 'inlineCode':
    case 'proseMoves':
      return node.value;
    case 'code':
      return ` ${node.value} `;
    case 'break':
      return ' ';
    case 'html':
      return node.value.replace(/<[^>]*>/g, '');
    case 'image':
      return node.alt ?? '';
    case 'link': {
      const words = plainWords(node.children, context);
      return /^https?:/.test(node.url) && node.url !== words ? `${words} <${node.url}>` : words;
    }
    case 'courseDirective':
      return directiveWords(node, context, among);
    case 'positionLink':
      return linkWords(node, context);
    case 'courseLink': {
      const { title, course, web } = context.ask('sibling', `${node.course}/${node.label}`) ?? {};
      const words = plainWords(node.children, context) || (title ?? course ?? node.course);
      return web === undefined ? words : `${words} <${web}>`;
    }
    case 'footnoteReference':
      return ` [${node.label ?? node.identifier}]`;
    case 'footnoteDefinition':
      return ` [${node.label ?? node.identifier}] ${plainWords(node.children, context)} `;
    case 'listItem':
      return ` - ${plainWords(node.children, context)}`;
    case 'tableRow':
      return ` ${node.children.map((cell) => plainWords(cell.children, context)).join(' | ')};`;
    case 'paragraph':
    case 'heading':
    case 'blockquote':
    case 'list':
    case 'table':
      return ` ${plainWords(node.children, context)} `;
    default:
      return 'children' in node
        ? node.children.map((each) => wordsOf(each, context, node.children)).join('')
        : '';
  }
}

/** A link without words has its position's title, or where that stands. */
function linkWords(node: PositionLinkNode, context: WordsContext): string {
  const { ask, settings, chapter } = context;
  const named = ask('label', node.label);
  if (node.children.length > 0 || named === null) return plainWords(node.children, context);
  return (
    named.title ??
    positionInWords(ask, named.ref, stringsFor(settings.language, settings.notation), chapter)
  );
}

function directiveWords(
  node: DirectiveNode,
  { ask, settings, chapter }: WordsContext,
  among: readonly TextNode[],
): string {
  const strings = stringsFor(settings.language, settings.notation);
  const place = () => {
    const named = ask('label', node.argument);
    if (named === null) return node.argument;
    return namedInWords(ask, named, strings, chapter);
  };
  switch (node.name) {
    case 'same':
    case 'later': {
      const { before, after } = referenceWords(node, among, strings);
      return `${before} ${place()}${after}`;
    }
    case 'end':
      return strings.lineEnds(node.argument);
    case 'option':
      return strings.alternative(node.argument);
    case 'judge':
      return readJudgement(node.argument).text;
    case 'mark':
      return drawn(strings.letter.marked, node.argument);
    case 'plan':
    case 'threat':
    case 'guard':
      return drawn(strings.letter.arrows[node.name], node.argument);
    case 'here':
    case 'claim':
    case 'learn':
    case 'todo':
    case 'allow':
      return '';
  }
}

/** What a board shows, in words: `(Plan: f3-e5, e5-g6)`. */
export function drawn(what: string, items: string): string {
  return `(${what}: ${items.split(/[\s,]+/).join(', ')})`;
}
