import type { Code, Paragraph, Parent, Root, RootContent } from 'mdast';
import * as z from 'zod';
import { createLocator, lineStarts } from '../diagnostics/index.ts';
import type { BlockContext } from './blocks/block-context.ts';
import { createBlockKeys } from './blocks/block-key.ts';
import type { FileText } from './blocks/fence.ts';
import { blockNames, readBlock } from './blocks/read-block.ts';
import { cleanText } from './files/clean-text.ts';
import type { FilesBeside } from './files-beside.ts';
import { titleText } from './front-matter/front-texts.ts';
import { readFrontMatter } from './front-matter/read-front-matter.ts';
import { type LinkTargets, resolveLink } from './links/resolve-link.ts';
import { limitTree } from './markdown/limits/index.ts';
import { parseMarkdown } from './markdown/remark-course.ts';
import { readTextNodes } from './prose/read-text-nodes.ts';
import { placeOfUrl, urlRange } from './prose/url-range.ts';
import { takeDefinitions } from './read-chapter.ts';
import { createCounter, placeOf, type TextContext, takeMedia } from './text-context.ts';
import type { CourseProblem, DiagramSyntax, NewsSyntax, SourceFile } from './types.ts';

const date = 'a date as year, month and day, such as `2026-11-25`';
const title = 'a text, the title of the news';

const schema = z.strictObject(
  {
    title: titleText(title),
    date: z.string({ error: date }).refine(isDay, { error: date }),
    from: z.string({ error: 'a text (in quotes if it is a number)' }).optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** Whether a text is a day of the calendar, as `2026-11-25`. */
export function isDay(text: string): boolean {
  if (!/^\d{4}-\d{2}-\d{2}$/.test(text)) return false;
  const day = new Date(`${text}T00:00:00Z`);
  return !Number.isNaN(day.getTime()) && day.toISOString().startsWith(text);
}

/**
 * Reads a file of `news/`: Markdown that links to the course and shows its boards, with no moves of its own. Since
 * news grows old, a link to something that the course no longer has is a problem of the rule `news-link`, and becomes
 * plain text.
 */
export function readNews(
  written: SourceFile,
  targets: LinkTargets & Pick<FilesBeside, 'unfit' | 'pieces'>,
): NewsSyntax {
  const problems: CourseProblem[] = [];
  const report: TextContext['report'] = (problem) =>
    problems.push({ rule: 'chapter-unreadable', ...problem });
  const source = cleanText(written, report);
  const file: FileText = {
    file: source.path,
    text: source.text,
    lineStarts: lineStarts(source.text),
    pointAt: createLocator(source.text),
  };
  const body: Root = parseMarkdown(source.text);
  limitTree(body, { source: file, report });
  const usedMedia = new Set<string>();
  const language = written.pieces ?? targets.pieces ?? 'en';
  const context: BlockContext = {
    source: file,
    definitions: takeDefinitions(body),
    media: targets.media,
    unfit: targets.unfit,
    chapters: undefined,
    usedMedia,
    pieces: language === 'en' ? undefined : { language },
    nextId: createCounter(),
    games: new Map(),
    shownGames: { size: 0 },
    keyOf: createBlockKeys(),
    report,
    reportMoves: report,
  };
  const { sound: front } = readFrontMatter(body, file, {
    schema,
    what: 'news file',
    demand: 'required',
    report,
  });
  const blocks: DiagramSyntax[] = [];
  readDiagrams(body, blocks, { ...context, targets, problems });
  readTextNodes(body, context);
  resolveLinks(body, { ...context, targets, problems });
  return {
    name: source.path.replace(/^.*\//, '').replace(/\.md$/, ''),
    title: front.title ?? '',
    date: front.date ?? '',
    file: source.path,
    body,
    blocks,
    media: [...usedMedia].sort(),
    problems,
  };
}

interface NewsContext extends BlockContext {
  readonly targets: LinkTargets;
  readonly problems: CourseProblem[];
}

/** Replaces diagrams by block nodes; other blocks stay and are reported later. */
function readDiagrams(parent: Parent, blocks: DiagramSyntax[], context: NewsContext): void {
  for (const [index, child] of parent.children.entries()) {
    if (child.type !== 'code') {
      if ('children' in child) readDiagrams(child, blocks, context);
      continue;
    }
    if (child.lang !== 'diagram' && blockNames.some((name) => name === child.lang)) continue;
    const block = readBlock(child as Code, context);
    if (block?.kind !== 'diagram') continue;
    const caption: Paragraph = { type: 'paragraph', children: block.caption };
    resolveLinks(caption, context);
    parent.children[index] = {
      type: 'courseBlock',
      block: blocks.length,
      ...(child.position && { position: child.position }),
    };
    blocks.push({ ...block, caption: caption.children });
  }
}

/** Finds the files that links name, and reports elements that only chapters can have. */
function resolveLinks(parent: Parent, context: NewsContext): void {
  parent.children = parent.children.flatMap((node): RootContent[] => {
    if (node.type === 'code') reportBlock(node.lang ?? '', node, context);
    if (node.type === 'courseDirective' && node.name !== 'todo') {
      context.report({
        place: placeOf(node, context),
        message: `\`:${node.name}[…]\` speaks of a position, and news shows none.`,
        hint: 'Write it in a chapter, and link to the position with `[text](pos:name)`.',
      });
    }
    if ('children' in node) resolveLinks(node, context);
    if (node.type !== 'link') return [node];
    const resolved = resolveLink(node.url, context.source.file, context.targets);
    if ('problem' in resolved) {
      context.problems.push({
        rule: 'news-link',
        place: placeOfUrl(node, context),
        ...resolved.problem,
      });
      return node.children;
    }
    if (resolved.media !== undefined && !takeMedia(resolved.media, node, context)) {
      return node.children;
    }
    const range = urlRange(node, context);
    return [{ ...node, url: resolved.url, ...(range && { data: { urlRange: range } }) }];
  });
}

function reportBlock(name: string, node: RootContent, context: NewsContext): void {
  if (!blockNames.some((known) => known === name)) return;
  context.report({
    place: placeOf(node, context),
    message: `A \`${name}\` block stands in a chapter; news shows none.`,
    hint: 'Put it into a chapter, and link to it; a `diagram` may stand in news.',
  });
}
