import type { Element, Root } from 'hast';
import type { Definition, FootnoteDefinition, Nodes } from 'mdast';
import { defaultHandlers, type State, toHast } from 'mdast-util-to-hast';
import { chapterIds, repeatedTitle } from '../addresses/index.ts';
import type { Chapter } from '../model/index.ts';
import type { Ask } from './ask/ask.ts';
import type { RenderContext } from './context.ts';
import { joinFixed } from './fixed-text.ts';
import { elementsIn, nodesIn } from './nodes-in.ts';
import { useFigurines } from './notation.ts';
import { targetOf } from './prose/links.ts';
import { linkMentions } from './prose/mentions.ts';
import { proseHandlers } from './prose/prose.ts';
import { cleanRawHtml } from './prose/raw-html.ts';

const known = new WeakMap<Ask, WeakMap<Chapter, Root>>();

/**
 * The body of a chapter as a document, without its title. It is made once and shared by all media, which must not
 * change it.
 */
export function chapterDocument(context: RenderContext): Root {
  const { ask, chapter } = context;
  const documents = known.get(ask) ?? new WeakMap<Chapter, Root>();
  known.set(ask, documents);
  const document = documents.get(chapter) ?? makeDocument(context);
  documents.set(chapter, document);
  return document;
}

function makeDocument(context: RenderContext): Root {
  const { chapter, strings } = context;
  let hasRawHtml = false;
  let topHeading = false;
  const definitions: (Definition | FootnoteDefinition)[] = [];
  const body = withAnswers(chapter, withoutTitle(chapter));
  for (const node of nodesIn<Nodes>(body)) {
    if (node.type === 'html') hasRawHtml = true;
    if (node.type === 'definition' || node.type === 'footnoteDefinition') definitions.push(node);
    if (node.type === 'heading' && node.depth === 1) topHeading = true;
  }
  const handlers = {
    ...proseHandlers(context, topHeading ? 1 : 0),
    root(state: State) {
      define(definitions, state);
      // The library's own handler returns a root too, but the type of handlers does not say so.
      return defaultHandlers.root(state, body) as never;
    },
  };
  // Pass an empty tree instead of the body, in which the library would search for definitions with `unist-util-visit`
  // (see `nodesIn`).
  const tree = toHast(
    { type: 'root', children: [] },
    {
      handlers,
      allowDangerousHtml: true,
      clobberPrefix: 'note-',
      footnoteLabel: strings.footnotes,
      footnoteLabelProperties: { className: ['footnotes-title'] },
      footnoteBackLabel: strings.footnoteBack,
    },
  );
  const clean =
    hasRawHtml || tree.type !== 'root' ? cleanRawHtml(tree, chapterIds(chapter).more()) : tree;
  for (const node of elementsIn(clean)) {
    alignByClass(node);
    if (node.tagName === 'a' && node.properties.href !== undefined) refer(node, context);
  }
  linkMentions(clean, context);
  useFigurines(clean, context.notation);
  return { ...clean, children: joinFixed(clean.children) };
}

/** The first definition of a name counts (CommonMark, 4.7). */
function define(definitions: readonly (Definition | FootnoteDefinition)[], state: State): void {
  for (const node of definitions) {
    const id = node.identifier.toUpperCase();
    if (node.type === 'footnoteDefinition') {
      if (!state.footnoteById.has(id)) state.footnoteById.set(id, node);
    } else if (!state.definitionById.has(id)) state.definitionById.set(id, node);
  }
}

/**
 * Turns the address of a link into a reference: links that a library made for footnotes, or an author wrote as HTML.
 */
function refer(node: Element, context: RenderContext): void {
  const { href, ...rest } = node.properties;
  const url = String(href);
  node.properties = rest;
  const isNote = 'dataFootnoteRef' in rest || 'dataFootnoteBackref' in rest;
  const target = isNote
    ? { to: 'note' as const, id: decodeURIComponent(url.slice(1)) }
    : targetOf(context, url);
  if (target === undefined) node.tagName = 'span';
  else node.data = { target, link: 'words' };
}

/** Drops a first heading that repeats the chapter's title. */
function withoutTitle(chapter: Chapter): Chapter['body'] {
  const { body } = chapter;
  if (repeatedTitle(chapter) === undefined) return body;
  return { ...body, children: body.children.slice(1) };
}

function withAnswers({ blocks }: Chapter, body: Chapter['body']): Chapter['body'] {
  if (!blocks.some(({ kind }) => kind === 'exercise')) return body;
  const exercises: number[] = [];
  for (const node of nodesIn<Nodes>(body)) {
    if (node.type !== 'courseBlock') continue;
    if (blocks[node.block]?.kind === 'exercise') exercises.push(node.block);
  }
  if (exercises.length === 0) return body;
  return { ...body, children: [...body.children, { type: 'courseAnswers', exercises }] };
}

/** `align` on table cells became obsolete; a class says the same. */
function alignByClass(node: Element): void {
  const align = node.properties.align;
  if (typeof align !== 'string') return;
  delete node.properties.align;
  node.properties.className = [`align-${align}`];
}
