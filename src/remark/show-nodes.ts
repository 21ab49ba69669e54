import type { ElementContent, RootContent as HastContent } from 'hast';
import type { Heading, Link, Node, Root, RootContent } from 'mdast';
import { toHast } from 'mdast-util-to-hast';
import { visit } from 'unist-util-visit';
import { chapterIds } from '../addresses/index.ts';
import type { Chapter } from '../model/index.ts';
import {
  type Addresses,
  type AnswersNode,
  addressInSite,
  assignAddresses,
  type Medium,
  proseHandlers,
  type RenderContext,
  resolveAll,
  targetOf,
  tidySpaces,
} from '../render/index.ts';
import { isLost, sourceOfBlock } from './source-of-block.ts';

/** What the pipeline gives and its author asks for. */
export interface Showing {
  readonly board: Medium['board'];
  /** The chapter's file as it was written. */
  readonly text: string;
  /** The address of another chapter's page. */
  readonly pageAddress?:
    | ((chapter: { readonly id: string; readonly path: string }) => string)
    | undefined;
}

/**
 * The chapter's text, whose course nodes carry the HTML that they are shown as. They stay the nodes that they
 * are, for the plugins behind; the chapter itself stays as it was.
 */
export function showNodes(
  context: RenderContext,
  { board, text, pageAddress }: Showing,
): RootContent[] {
  const { chapter, course } = context;
  const body: Root = structuredClone(chapter.body);
  const inSite = assignAddresses(course);
  const page = (file: string) => {
    const id = course.chapters.find((each) => each.file === file)?.id ?? '';
    return pageAddress?.({ id, path: file }) ?? inSite.page(file);
  };
  const addresses: Addresses = {
    ...inSite,
    page,
    href: (ref, from) =>
      `${ref.chapter === from ? '' : page(ref.chapter)}#${encodeURIComponent(inSite.id(ref))}`,
  };
  const handlers = proseHandlers(context, 0);
  const medium: Medium = {
    isLive: false,
    board,
    addressOf: (target) => addressInSite(target, addresses, chapter.file),
  };
  const ids = headingsIn(chapter.body).map((heading) => chapterIds(chapter).ofHeading(heading));
  for (const [index, heading] of headingsIn(body).entries()) nameHeading(heading, ids[index]);
  const shown = (node: RootContent, within: 'root' | 'paragraph') => {
    const made = toHast({ type: within, children: [node] } as Root, { handlers });
    const children = 'children' in made ? made.children : [];
    return resolveAll(children, medium, context.strings).filter(isContent);
  };
  visit(body, (node: Node) => {
    const each = node as RootContent;
    if (each.type === 'paragraph') each.children = tidySpaces(each.children);
    if (each.type === 'link') lead(each, context, medium);
    if (each.type === 'courseBlock') {
      const block = chapter.blocks[each.block];
      const parts = shown(each, 'root');
      const isSource = block !== undefined && isLost(block, parts);
      give(each, isSource ? [sourceOfBlock(block, text)] : parts.map(withStrongMoves), 'div');
    } else if (isInlineNode(each)) give(each, shown(each, 'paragraph'), 'span');
  });
  const answers = answersTo(chapter);
  if (answers === undefined) return body.children;
  give(answers, shown(answers, 'root'), 'div');
  return [...body.children, answers];
}

/** A link to a chapter leads to its page. Every other one is the pipeline's matter. */
function lead(link: Link, context: RenderContext, medium: Medium): void {
  const target = targetOf(context, link.url);
  if (target?.to === 'chapter') link.url = medium.addressOf(target) ?? link.url;
}

/** The moves of a block's own line stand out from what is said of them, with or without a style sheet. */
function withStrongMoves<T extends ElementContent>(part: T): T {
  if (part.type !== 'element') return part;
  const classes = part.properties.className;
  const has = (name: string) => Array.isArray(classes) && classes.includes(name);
  if (has('variations') || has('variation') || has('from')) return part;
  if (part.tagName === 'span' && has('move')) return { ...part, tagName: 'strong' };
  return { ...part, children: part.children.map(withStrongMoves) };
}

function isInlineNode({ type }: RootContent): boolean {
  return ['courseDirective', 'courseLink', 'positionLink', 'proseMoves'].includes(type);
}

/** The answers of all exercises, which stand at the end. */
function answersTo({ blocks }: Chapter): RootContent | undefined {
  const exercises = [...blocks.keys()].filter((index) => blocks[index]?.kind === 'exercise');
  if (exercises.length === 0) return undefined;
  const node: AnswersNode = { type: 'courseAnswers', exercises };
  return node as Node as RootContent;
}

function isContent(node: HastContent): node is ElementContent {
  return node.type === 'element' || node.type === 'text' || node.type === 'comment';
}

/** What `mdast-util-to-hast` makes of a node: one element as it is, several within another one. */
function give(node: RootContent, shown: readonly ElementContent[], around: 'div' | 'span'): void {
  const parts = shown.filter((part) => part.type !== 'text' || part.value.trim() !== '');
  const [only] = parts;
  const { tagName, properties, children } =
    parts.length === 1 && only?.type === 'element'
      ? only
      : { tagName: around, properties: {}, children: [...shown] };
  node.data = { ...node.data, hName: tagName, hProperties: properties, hChildren: children };
}

function headingsIn(tree: Root): Heading[] {
  const found: Heading[] = [];
  visit(tree, 'heading', (heading) => {
    found.push(heading);
  });
  return found;
}

/** Links to a heading hold, unless another plugin has named it. */
function nameHeading(node: Heading, id: string | undefined): void {
  const { hProperties } = node.data ?? {};
  if (id === undefined || hProperties?.id !== undefined) return;
  node.data = { ...node.data, hProperties: { ...hProperties, id } };
}
