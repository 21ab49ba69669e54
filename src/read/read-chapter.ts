import type { Code, Definition, Parent, Root, RootContent } from 'mdast';
import * as z from 'zod';
import type { PieceKind, PiecesLanguage } from '../chess/index.ts';
import { createLocator, lineStarts, topOf } from '../diagnostics/index.ts';
import type { MediaFault } from '../media/index.ts';
import type { BlockContext } from './blocks/block-context.ts';
import { createBlockKeys } from './blocks/block-key.ts';
import type { FileText } from './blocks/fence.ts';
import { learnWords } from './blocks/learn.ts';
import { readBlock } from './blocks/read-block.ts';
import { isPageFile } from './documents.ts';
import { cleanText } from './files/clean-text.ts';
import { isLongId, titleText } from './front-matter/front-texts.ts';
import { type PageFront, pageChoicesOf, pageFrontOf, whereOf } from './front-matter/page-front.ts';
import {
  type FrontMatter,
  type FrontMatterOptions,
  readFrontMatter,
} from './front-matter/read-front-matter.ts';
import { limitTree } from './markdown/limits/index.ts';
import { parseMarkdown } from './markdown/remark-course.ts';
import type { BlockNode } from './nodes.ts';
import { readTextNodes } from './prose/read-text-nodes.ts';
import { createCounter } from './text-context.ts';
import type { BlockSyntax, ChapterSyntax, CourseProblem, SourceFile } from './types.ts';
import { choicesOf } from './yaml/choices.ts';

/** Names that the published site uses for pages and folders of its own. */
export const reservedIds: readonly string[] = [
  '404',
  'assets',
  'boards',
  'changes',
  'compare',
  'exercises',
  'files',
  'images',
  'index',
  'media',
  'news',
  'notes',
  'offline',
  'patterns',
  'positions',
  'practice',
  'print',
  'search',
  'signs',
  'tree',
];

export const chapterFront = z.strictObject(
  {
    title: titleText('a text, the title of the chapter'),
    summary: z.string({ error: 'a text (in quotes if it contains `: `)' }).optional(),
    id: z
      .string({ error: 'letters, digits and hyphens, such as `main-line`' })
      .regex(/^[\p{L}\p{N}]+(?:-[\p{L}\p{N}]+)*$/u, {
        error: 'letters, digits and hyphens, such as `main-line`',
      })
      .refine((id) => !reservedIds.includes(id.toLowerCase()), {
        error: `another word, since the site has a page or folder of that name (${reservedIds.join(', ')})`,
      })
      .optional(),
    learn: z.enum(learnWords, { error: '`all`, `main` or `none`' }).optional(),
    draft: z.boolean({ error: '`true` or `false`' }).optional(),
  },
  { error: 'a list of `name: value` lines' },
);

/** What the front matter of a chapter may hold. */
export const chapterChoices = choicesOf(chapterFront);

const { learn: _, ...sharedFront } = chapterFront.shape;

export const pageFront = pageFrontOf(sharedFront);

/** What the front matter of a page may hold. */
export const pageChoices = pageChoicesOf(pageFront);

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
 * @param parsed its tree, if a unified pipeline has parsed it already.
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

interface Front {
  readonly title?: string | undefined;
  readonly summary?: string | undefined;
  readonly id?: string | undefined;
  readonly learn?: ChapterSyntax['learn'] | undefined;
  readonly draft?: boolean | undefined;
  /** Only for a page. */
  readonly page?: PageFront;
}

/** Reads the front matter of a chapter or a page; the path says which of them it is. */
export function readFront(
  body: Root,
  file: FileText,
  options: Pick<FrontMatterOptions<z.ZodObject>, 'demand' | 'report'>,
): FrontMatter<Front> {
  if (!isPageFile(file.file)) {
    return readFrontMatter(body, file, { ...options, schema: chapterFront, what: 'chapter' });
  }
  const { sound, textOf } = readFrontMatter(body, file, {
    ...options,
    schema: pageFront,
    what: 'page',
  });
  return { sound: { ...sound, page: whereOf(sound) }, textOf };
}

/** Reports a name that no file of the site can have. */
function reportId(id: string, file: string, front: Front, report: BlockContext['report']): void {
  const what = front.page ? 'page' : 'chapter';
  if (isLongId(id)) {
    report({
      place: topOf(file),
      message: `The name of this ${what} is too long for the files that are made of it.`,
      hint: 'Give it a shorter `id: …` in its front matter, or another file name.',
    });
  }
  const own = nameOfFile(file);
  // A chapter with such a name has always got a longer address. A page keeps its name as its address, which people
  // type and print.
  if (!front.page || front.id !== undefined || !reservedIds.includes(own)) return;
  report({
    place: topOf(file),
    message: `This page would be published as ${own}.html, and the site has a page or folder of that name.`,
    hint: 'Give it another file name, or an `id: …` in its front matter.',
  });
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
  for (const [index, child] of parent.children.entries()) {
    if (child.type === 'code') {
      const block = readBlock(child as Code, context);
      if (!block) continue;
      const node: BlockNode = {
        type: 'courseBlock',
        block: blocks.length,
        ...(child.position ? { position: child.position } : {}),
      };
      blocks.push(block);
      parent.children[index] = node;
    } else if ('children' in child) readBlocks(child, blocks, context);
  }
}

/** Takes the definitions of a chapter. Removes those of positions, since other readers do not know such addresses. */
export function takeDefinitions(body: Root): Map<string, Definition> {
  const definitions = new Map<string, Definition>();
  const take = (parent: Parent) => {
    parent.children = parent.children.filter((child: RootContent) => {
      if ('children' in child) take(child);
      if (child.type !== 'definition') return true;
      // CommonMark: of several definitions of one name the first counts.
      if (!definitions.has(child.identifier)) definitions.set(child.identifier, child);
      return !/^pos:/i.test(child.url);
    });
  };
  take(body);
  return definitions;
}

export function idFromFile(file: string): string {
  const id = nameOfFile(file);
  return reservedIds.includes(id) ? `chapter-${id}` : id;
}

/** `chapters/02-Quiet lines.md` gives `quiet-lines`: the number only orders the files. */
function nameOfFile(file: string): string {
  const name = file.replace(/^.*\//, '').replace(/\.md$/, '');
  const plain = (text: string) =>
    text
      .normalize('NFD')
      .replace(/\p{M}/gu, '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N}]+/gu, '-')
      .replace(/^-|-$/g, '');
  return plain(name.replace(/^\d+[\s._-]*/, '')) || plain(name) || 'chapter';
}
