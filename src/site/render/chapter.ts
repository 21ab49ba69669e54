import type { Element, Root } from 'hast';
import { toHtml } from 'hast-util-to-html';
import type { Nodes } from 'mdast';
import { toHast } from 'mdast-util-to-hast';
import { toString as plainText } from 'mdast-util-to-string';
import { visit } from 'unist-util-visit';
import type { Chapter } from '../../model/types.ts';
import type { RenderContext } from './context.ts';
import { siteHref } from './links.ts';
import { elementsIn, nodesIn } from './nodes-in.ts';
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
  for (const node of nodesIn<Nodes>(body)) {
    if (node.type === 'html') hasRawHtml = true;
    if (node.type === 'heading' && node.depth === 1) topHeading = true;
  }
  const handlers = proseHandlers(context, topHeading ? 1 : 0);
  const tree = toHast(body, {
    handlers,
    allowDangerousHtml: true,
    clobberPrefix: 'note-',
    footnoteLabel: strings.footnotes,
    footnoteLabelProperties: { className: ['footnotes-title'] },
    footnoteBackLabel: strings.footnoteBack,
  });
  const claimId = (wish: string) => context.addresses.claimId(chapter.file, wish);
  const clean = hasRawHtml || tree.type !== 'root' ? cleanRawHtml(tree, isBlock, claimId) : tree;
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
function withoutTitle({ body, title }: Chapter): Chapter['body'] {
  const [first, ...rest] = body.children;
  const repeats = first?.type === 'heading' && first.depth === 1 && plainText(first) === title;
  return repeats ? { ...body, children: rest } : body;
}

function withAnswers({ blocks }: Chapter, body: Chapter['body']): Chapter['body'] {
  const exercises: number[] = [];
  for (const node of nodesIn<Nodes>(body)) {
    if (node.type !== 'courseBlock') continue;
    if (blocks[node.block]?.kind === 'exercise') exercises.push(node.block);
  }
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
  for (const { properties } of elementsIn(tree)) {
    const { align } = properties;
    if (typeof align !== 'string') continue;
    delete properties.align;
    properties.className = [`align-${align}`];
  }
}
