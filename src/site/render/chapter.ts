import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { toHast } from 'mdast-util-to-hast';
import { visit } from 'unist-util-visit';
import { chapterIds, repeatedTitle } from '../../addresses/index.ts';
import type { Chapter } from '../../model/types.ts';
import type { RenderContext } from './context.ts';
import { siteHref } from './links.ts';
import { proseHandlers } from './prose.ts';
import { cleanRawHtml } from './raw-html.ts';

/** The body of a chapter as HTML, below its title. */
export function renderChapter(context: RenderContext): string {
  return toHtml(chapterTree(context), { allowDangerousHtml: true });
}

/** The body of a chapter as a tree; the boards in it are as the medium makes them. */
export function chapterTree(context: RenderContext): Root {
  const { chapter, strings } = context;
  let hasRawHtml = false;
  let topHeading = false;
  const body = withAnswers(chapter, withoutTitle(chapter));
  visit(body, (node) => {
    if (node.type === 'html') hasRawHtml = true;
    if (node.type === 'heading' && node.depth === 1) topHeading = true;
  });
  const handlers = proseHandlers(context, topHeading ? 1 : 0);
  const tree = toHast(body, {
    handlers,
    allowDangerousHtml: true,
    clobberPrefix: 'note-',
    footnoteLabel: strings.footnotes,
    footnoteLabelProperties: { className: ['footnotes-title'] },
    footnoteBackLabel: strings.footnoteBack,
  });
  const clean =
    hasRawHtml || tree.type !== 'root'
      ? cleanRawHtml(tree, isBlock, chapterIds(chapter).more())
      : tree;
  alignByClass(clean);
  if (hasRawHtml) leadToPages(clean, context);
  return clean;
}

/** Links to chapters that an author has written as HTML: the reader has found their files. */
function leadToPages(tree: Root, context: RenderContext): void {
  visit(tree, 'element', ({ tagName, properties }) => {
    const { href } = properties;
    if (tagName !== 'a' || typeof href !== 'string' || !href.startsWith('chapters/')) return;
    properties.href = siteHref(context, href);
  });
}

/** A body that begins with its chapter's title would show it twice. */
function withoutTitle(chapter: Chapter): Chapter['body'] {
  const { body } = chapter;
  if (repeatedTitle(chapter) === undefined) return body;
  return { ...body, children: body.children.slice(1) };
}

function withAnswers({ blocks }: Chapter, body: Chapter['body']): Chapter['body'] {
  const exercises: number[] = [];
  visit(body, 'courseBlock', ({ block }) => {
    if (blocks[block]?.kind === 'exercise') exercises.push(block);
  });
  if (exercises.length === 0) return body;
  return { ...body, children: [...body.children, { type: 'courseAnswers', exercises }] };
}

/** What a block of the course language became; nothing else has these classes before cleaning. */
function isBlock({ properties }: Element): boolean {
  const names = [properties.className].flat();
  return ['moves', 'diagram', 'exercise', 'game', 'pattern', 'answers'].some((name) =>
    names.includes(name),
  );
}

/** `align` on table cells became obsolete; a class says the same. */
function alignByClass(tree: Root): void {
  visit(tree, 'element', (node) => {
    const align = node.properties.align;
    if (typeof align !== 'string') return;
    delete node.properties.align;
    node.properties.className = [`align-${align}`];
  });
}
