import type { Definition, Parent, Root, RootContent } from 'mdast';
import type { PieceKind, PiecesLanguage } from '../chess/index.ts';
import { createLocator, lineStarts } from '../diagnostics/index.ts';
import type { MediaFault } from '../media/index.ts';
import type { BlockContext } from './blocks/block-context.ts';
import { createBlockKeys } from './blocks/block-key.ts';
import type { FileText } from './blocks/fence.ts';
import { readBlock } from './blocks/read-block.ts';
import { cleanText } from './files/clean-text.ts';
import { idFromFile, reportId } from './front-matter/document-id.ts';
import { readFront } from './front-matter/read-front.ts';
import { limitTree } from './markdown/limits/index.ts';
import { parseMarkdown } from './markdown/remark-course.ts';
import type { BlockNode } from './nodes.ts';
import { readTextNodes } from './prose/read-text-nodes.ts';
import { createCounter } from './text-context.ts';
import type { BlockSyntax, ChapterSyntax, CourseProblem, SourceFile } from './types.ts';

export interface ChapterOptions {
  /** Paths of the files in `media/`. */
  readonly media: ReadonlySet<string>;
  /** Why some of them are not published, by path; by default only their names are checked. */
  readonly unfit?: ReadonlyMap<string, MediaFault> | undefined;
  /** Paths of all chapters, to find where links lead; default: links are left alone. */
  readonly chapters?: ReadonlySet<string>;
  /** The PGN files of `games/`, by their path. */
  readonly games?: ReadonlyMap<string, SourceFile>;
  /** The language of the piece letters; default: SAN. The file's own setting comes first. */
  readonly pieces?: PiecesLanguage | undefined;
  /** Called for every piece letter in moves and claims, with its offset in the file. */
  readonly onLetter?: ((offset: number, kind: PieceKind) => void) | undefined;
  /** Without front matter the title is the file's name; default: front matter is required. */
  readonly frontMatter?: 'required' | 'optional';
}

/**
 * Reads one chapter.
 * @param tree its Markdown, if a unified pipeline has parsed it already.
 */
export function readChapter(
  written: SourceFile,
  {
    media,
    unfit = new Map(),
    chapters,
    games = new Map(),
    pieces: ofCourse = 'en',
    onLetter,
    frontMatter = 'required',
  }: ChapterOptions,
  tree?: Root,
): ChapterSyntax {
  const problems: CourseProblem[] = [];
  const report: BlockContext['report'] = (problem) =>
    problems.push({ rule: 'chapter-unreadable', ...problem });
  const source = cleanText(written, report);
  const starts = lineStarts(source.text);
  const file: FileText = {
    file: source.path,
    text: source.text,
    lineStarts: starts,
    pointAt: createLocator(source.text, starts),
  };
  const body = tree ?? parseMarkdown(source.text);
  limitTree(body, { source: file, report });
  const usedMedia = new Set<string>();
  const language = written.pieces ?? ofCourse;
  const context: BlockContext = {
    source: file,
    definitions: takeDefinitions(body),
    media,
    unfit,
    chapters,
    usedMedia,
    pieces: language === 'en' && !onLetter ? undefined : { language, onLetter },
    games,
    shownGames: { size: 0 },
    nextId: createCounter(),
    keyOf: createBlockKeys(),
    report,
    reportMoves: (problem) => problems.push({ rule: 'move-unreadable', ...problem }),
  };
  const { sound: front, textOf } = readFront(body, file, { demand: frontMatter, report });
  const id = front.id ?? idFromFile(source.path);
  reportId(id, source.path, front, report);
  const blocks: BlockSyntax[] = [];
  readBlocks(body, blocks, context);
  readTextNodes(body, context);
  nameHeadings(body, written.headings ?? []);
  return {
    id,
    title: front.title ?? idFromFile(source.path),
    ...(front.summary === undefined ? {} : { summary: front.summary }),
    ...(front.learn === undefined ? {} : { learn: front.learn }),
    ...(front.draft && { draft: true }),
    ...(front.page && { page: front.page }),
    ...(written.language === undefined ? {} : { language: written.language }),
    ...(language !== 'en' && { pieces: language }),
    file: source.path,
    frontTexts: [textOf('title'), textOf('summary')].filter((text) => text.length > 0),
    body,
    blocks,
    media: [...usedMedia].sort(),
    problems,
  };
}

/** Stores with each heading of a translation what it is called in the original. */
function nameHeadings(body: Root, originals: readonly string[]): void {
  const names = originals.values();
  const walk = (parent: Parent): void => {
    for (const child of parent.children) {
      if (child.type === 'heading') {
        const { value } = names.next();
        if (value !== undefined) child.data = { ...child.data, original: value };
      } else if ('children' in child) walk(child);
    }
  };
  if (originals.length > 0) walk(body);
}

/** Replaces fenced blocks of the course language, at any depth, by block nodes. */
function readBlocks(parent: Parent, blocks: BlockSyntax[], context: BlockContext): void {
  parent.children.forEach((child, index) => {
    if (child.type === 'code') {
      const block = readBlock(child, context);
      if (!block) return;
      const node: BlockNode = {
        type: 'courseBlock',
        block: blocks.length,
        ...(child.position ? { position: child.position } : {}),
      };
      blocks.push(block);
      parent.children[index] = node;
    } else if (holdsBlocks(child)) readBlocks(child, blocks, context);
  });
}

/** Quotes, lists and footnotes; paragraphs, which most nodes stand in, hold text alone. */
function holdsBlocks(node: RootContent): node is RootContent & Parent {
  return 'children' in node && node.type !== 'paragraph';
}

/** Takes the definitions of a chapter. Removes those of positions, since other readers do not know such addresses. */
export function takeDefinitions(body: Root): Map<string, Definition> {
  const definitions = new Map<string, Definition>();
  const take = (parent: Parent) => {
    parent.children = parent.children.filter((child: RootContent) => {
      if (holdsBlocks(child)) take(child);
      if (child.type !== 'definition') return true;
      // CommonMark: of several definitions of one name the first counts.
      if (!definitions.has(child.identifier)) definitions.set(child.identifier, child);
      return !/^pos:/i.test(child.url);
    });
  };
  take(body);
  return definitions;
}
