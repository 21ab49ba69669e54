import type { CourseFrame } from '../../read/index.ts';
import type { PlayedChapter } from '../play/play-chapters.ts';
import type { SaidElsewhere } from '../play/work.ts';
import { type ChapterOutline, knowOutline, outlineChapter } from '../queries/outline.ts';
import type { Block, Chapter, Course, CourseProblem, Label, Page } from '../types.ts';
import { firstNames } from './first-names.ts';
import { followGame } from './follow-game.ts';
import { joinFrame } from './join-frame.ts';
import { makeGraph } from './make-graph.ts';
import { findPattern } from './match-pattern.ts';

/** What is known of a chapter before it is played. */
export type ChapterFront = Pick<
  Chapter,
  'id' | 'title' | 'summary' | 'learn' | 'draft' | 'page' | 'language' | 'pieces' | 'file' | 'media'
>;

/** A chapter to join to a course. Its content is made at the first request. */
export interface ChapterToJoin {
  readonly front: ChapterFront;
  readonly names: Chapter['names'];
  /** What its course's graph is made of; absent where the chapter is at hand anyway. */
  readonly outline?: ChapterOutline | undefined;
  /** The played chapter, with what other chapters say of its positions. */
  readonly whole: () => Chapter;
}

export function frontOf(chapter: Chapter): ChapterFront {
  const { id, title, summary, learn, draft, page, language, pieces, file, media } = chapter;
  return {
    id,
    title,
    ...(summary !== undefined && { summary }),
    ...(learn !== undefined && { learn }),
    ...(draft && { draft }),
    ...(page && { page }),
    ...(language !== undefined && { language }),
    ...(pieces && { pieces }),
    file,
    media,
  };
}

/**
 * Joins chapters and pages to a course: its names, its graph of positions, the exits of its games. Looking at one
 * chapter plays no other; looking at the graph plays those without an outline.
 * @param documents the chapters, then the pages.
 * @param unsought the problems that `findUnsought` reports.
 */
export function assembleCourse(
  frame: CourseFrame,
  documents: readonly ChapterToJoin[],
  unsought: readonly CourseProblem[],
): Course {
  const left = new Set(unsought.map(({ place }) => place));
  let known: Course['graph'] | undefined;
  const { side } = frame.settings;
  const graph = () => {
    known ??= makeGraph(
      documents
        .filter(({ front }) => !front.page)
        .map(({ front, outline, whole }) => ({
          file: front.file,
          ...(outline ?? outlineChapter(whole(), side)),
        })),
    );
    return known;
  };
  const mayLookFor = (block: Block) => !left.has(block.place);
  const joined = documents.map((document) => lazyChapter(document, graph, mayLookFor));
  return {
    ...joinFrame(frame, unsought),
    chapters: joined.filter((document) => !document.page),
    pages: joined.filter((document): document is Page => document.page !== undefined),
    labels: labelsOf(documents),
    get graph() {
      return graph();
    },
  };
}

function lazyChapter(
  { front, names, outline, whole }: ChapterToJoin,
  graph: () => Course['graph'],
  mayLookFor: (pattern: Block) => boolean,
): Chapter {
  let blocks: readonly Block[] | undefined;
  const chapter: Chapter = {
    ...front,
    get frontTexts() {
      return whole().frontTexts;
    },
    get body() {
      return whole().body;
    },
    get blocks() {
      blocks ??= joinGraph(whole().blocks, graph, mayLookFor);
      return blocks;
    },
    get spoken() {
      return whole().spoken;
    },
    names,
    get problems() {
      return whole().problems;
    },
  };
  if (outline) knowOutline(chapter, outline);
  return chapter;
}

/** What other chapters say of each chapter's positions, by its file. */
export function saidByChapter(
  played: readonly Pick<PlayedChapter, 'elsewhere'>[],
): ReadonlyMap<string, readonly SaidElsewhere[]> {
  const said = new Map<string, SaidElsewhere[]>();
  for (const one of played.flatMap(({ elsewhere }) => elsewhere)) {
    const there = said.get(one.ref.chapter);
    if (there) there.push(one);
    else said.set(one.ref.chapter, [one]);
  }
  return said;
}

function labelsOf(chapters: readonly ChapterToJoin[]): Record<string, Label> {
  // No prototype: names come from the author's text.
  const labels: Record<string, Label> = Object.create(null);
  const inOrder = chapters.map(({ front: { file }, names }) => ({ file, names }));
  for (const { name, title, ref, place } of firstNames(inOrder).values()) {
    if (ref) labels[name] = { name, ...(title !== undefined && { title }), ref, place };
  }
  return labels;
}

/** Adds to a chapter's blocks what only the whole course knows: exits of games and matches of patterns. */
function joinGraph(
  blocks: readonly Block[],
  graph: () => Course['graph'],
  mayLookFor: (pattern: Block) => boolean,
): readonly Block[] {
  if (!blocks.some(({ kind }) => kind === 'pattern' || kind === 'game')) return blocks;
  return blocks.map((block): Block => {
    if (block.kind === 'pattern') {
      return mayLookFor(block) ? { ...block, matches: findPattern(block, graph()) } : block;
    }
    const leaves = block.kind === 'game' && followGame(block.nodes, graph());
    return leaves ? { ...block, leaves } : block;
  });
}
