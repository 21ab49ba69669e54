import { fullMoveNumber } from '../../chess/index.ts';
import type { Chapter, Course, Learn, MoveNode, MovesBlock, NodeRef, Side } from '../types.ts';
import { adviceIn, asideIn, isBadSign } from './advice-in-block.ts';
import { chapterAt } from './node-at.ts';

/**
 * A chapter without its words: what the graph, the advice and the practice of a course are made of. A kept one needs not
 * be played for that.
 */
export interface ChapterOutline {
  /** Its blocks of moves. */
  readonly blocks: readonly BlockOutline[];
  /** The keys of its diagrams that show a position; absent without any. */
  readonly diagrams?: readonly string[];
}

export interface BlockOutline {
  readonly key: string;
  /** The name that it starts from. */
  readonly from?: string;
  /** What practice asks of it, where it says so itself. */
  readonly learn?: Learn;
  /** The full-move number that it starts with, where that is not 1. */
  readonly number?: number;
  /** The nodes that have a position; parents before their children. */
  readonly nodes: readonly NodeOutline[];
}

export interface NodeOutline {
  /** Index in the block. */
  readonly index: number;
  readonly parent?: number;
  /** `Position.key`. */
  readonly key: string;
  readonly san?: string;
  /** The last of the signs `?`, `??` and `?!` on the move, by its glyph. */
  readonly bad?: number;
  /** Whether it stands at or behind a move of the course's side that is an option or called bad. */
  readonly aside?: true;
  /** Whether the course advises the move, unless its block starts from a position that stands aside. */
  readonly advised?: true;
  /** What `:learn` says of it. */
  readonly learn?: Learn;
  /** Whether it varies a move that has no position, and so is not among the nodes. */
  readonly varies?: true;
}

export function outlineBlock(block: MovesBlock, side: Side): BlockOutline {
  const marked = { advice: adviceIn(block, side), aside: asideIn(block, side) };
  const start = block.nodes[0]?.position;
  const number = start ? fullMoveNumber(start) : 1;
  return {
    key: block.key,
    ...(block.from && { from: block.from.name }),
    ...(block.learn !== undefined && { learn: block.learn }),
    ...(number > 1 && { number }),
    nodes: block.nodes.flatMap((node) => outlineNode(node, block, marked) ?? []),
  };
}

function outlineNode(
  { index, parent, position, move, glyphs, statements }: MoveNode,
  { nodes }: MovesBlock,
  { advice, aside }: Record<'advice' | 'aside', ReadonlySet<number>>,
): NodeOutline | undefined {
  if (!position) return undefined;
  const bad = glyphs.findLast(isBadSign);
  const [first] = parent === undefined ? [] : (nodes[parent]?.children ?? []);
  const learn = statements.findLast(({ name }) => name === 'learn')?.argument;
  return {
    index,
    ...(parent !== undefined && { parent }),
    key: position.key,
    ...(move && { san: move.san }),
    ...(bad !== undefined && { bad }),
    ...(aside.has(index) && { aside: true }),
    ...(advice.has(index) && { advised: true }),
    ...(learn !== undefined && { learn: learn as Learn }),
    ...(first !== undefined && !nodes[first]?.position && { varies: true }),
  };
}

/** The keys of the diagrams of a chapter that show a position. */
export function diagramsIn({ blocks }: Pick<Chapter, 'blocks'>): string[] {
  return blocks.flatMap((block) =>
    block.kind === 'diagram' && block.position !== undefined ? [block.key] : [],
  );
}

const known = new WeakMap<Chapter, ChapterOutline>();

/** Notes the outline of a chapter of a course, so that nobody has to play it for that. */
export function knowOutline(chapter: Chapter, outline: ChapterOutline): void {
  known.set(chapter, outline);
}

/** @param chapter of the course. */
export function outlineOf({ settings }: Course, chapter: Chapter): ChapterOutline {
  const found = known.get(chapter) ?? outlineChapter(chapter, settings.side);
  known.set(chapter, found);
  return found;
}

export function outlineChapter(chapter: Pick<Chapter, 'blocks'>, side: Side): ChapterOutline {
  const diagrams = diagramsIn(chapter);
  return {
    blocks: chapter.blocks.flatMap((block) =>
      block.kind === 'moves' ? [outlineBlock(block, side)] : [],
    ),
    ...(diagrams.length > 0 && { diagrams }),
  };
}

interface OutlinedBlock {
  readonly block: BlockOutline;
  /** By their indices in the block. */
  readonly nodes: readonly (NodeOutline | undefined)[];
}

const byKey = new WeakMap<ChapterOutline, ReadonlyMap<string, OutlinedBlock>>();

/** A block of moves, by any place in it. */
export function outlinedBlockAt(
  course: Course,
  ref: Pick<NodeRef, 'chapter' | 'block'>,
): OutlinedBlock | undefined {
  const chapter = chapterAt(course, ref);
  if (chapter === undefined) return undefined;
  const outline = outlineOf(course, chapter);
  const blocks = byKey.get(outline) ?? new Map(outline.blocks.map(withNodes));
  byKey.set(outline, blocks);
  return blocks.get(ref.block);
}

function withNodes(block: BlockOutline): [string, OutlinedBlock] {
  const nodes: NodeOutline[] = [];
  for (const node of block.nodes) nodes[node.index] = node;
  return [block.key, { block, nodes }];
}

/** A node of a block of moves that has a position. */
export function outlinedNodeAt(course: Course, ref: NodeRef): NodeOutline | undefined {
  return outlinedBlockAt(course, ref)?.nodes[ref.node];
}
