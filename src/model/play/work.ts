/** A course while it is being played: the only mutable data of the model. */
import type { PhrasingContent, RootContent } from 'mdast';
import type { PlayedMove, Position, Square } from '../../chess/index.ts';
import type { Place } from '../../diagnostics/index.ts';
import type {
  BlockSyntax,
  ChapterSyntax,
  CourseProblem,
  DirectiveNode,
  TreeSyntax,
} from '../../read/index.ts';
import { mainLine } from '../main-line.ts';
import type { ModelLimits } from '../model-limits.ts';
import type { Arrow, GivenName, MoveNode, NodeRef, Statement } from '../types.ts';
import type { ShowingOrder } from './showing.ts';

type Mutable<T> = { -readonly [Key in keyof T]: T[Key] };

/** A node while the model is being made; the finished model is read-only. */
export type NodeInWork = Omit<
  Mutable<MoveNode>,
  'marks' | 'arrows' | 'labels' | 'statements' | 'index'
> & {
  readonly index: number;
  marks: Square[];
  arrows: Arrow[];
  labels: string[];
  statements: Statement[];
};

export interface TreeInWork {
  readonly syntax: TreeSyntax;
  readonly nodes: NodeInWork[];
}

/** A node that a text has shown: of a chapter that is being played, or by a name of a chapter that was kept. */
export type ShownNode = {
  readonly ref: NodeRef;
  /** The name by which a diagram or an exercise shows it. */
  readonly by?: string;
} & ({ readonly block: BlockInWork; readonly node: NodeInWork } | { readonly given: GivenName });

export interface BlockInWork {
  readonly syntax: BlockSyntax;
  readonly chapter: ChapterInWork;
  /** Its index in the chapter. */
  readonly index: number;
  /** The tree that references into the block use. */
  readonly tree: TreeInWork;
  /** The lines of an exercise: trees that start from its position. Nothing refers to them. */
  readonly lines: Readonly<Record<'answer' | 'also' | 'wrong', readonly TreeInWork[]>>;
  state: 'new' | 'open' | 'played';
  /** The node whose position a text behind the block speaks of. */
  shows?: ShownNode | undefined;
  /** The castlings on the way to its start, in earlier blocks. */
  castled: readonly PlayedMove[];
}

/** What a chapter says of a position that another one shows. */
export interface SaidElsewhere {
  readonly ref: NodeRef;
  readonly label?: string;
  readonly marks?: readonly Square[];
  readonly arrows?: readonly Arrow[];
  readonly statement?: Statement;
}

export interface ChapterInWork {
  readonly syntax: ChapterSyntax;
  readonly blocks: readonly BlockInWork[];
  readonly byKey: ReadonlyMap<string, BlockInWork>;
  /** Where the chapter stands in the course. */
  readonly order: number;
  readonly spoken: {
    readonly directives: Record<number, NodeRef>;
    readonly moves: Record<number, (NodeRef | null)[]>;
    readonly unsought: number[];
  };
  readonly problems: CourseProblem[];
  readonly elsewhere: SaidElsewhere[];
  /** The names that were asked for, whoever gives them. */
  readonly asked: Set<string>;
  showing?: ShowingOrder;
  /** The node shown last at an index of that order; null for none. */
  readonly shownAt: Map<number, ShownNode | null>;
  /** How many more nodes may be compared with moves that its texts mention. */
  readonly budget: { left: number };
  /** Whether a block of it starts, directly or not, from itself. */
  isCircular: boolean;
}

/** Where a name is given first in the course. */
export type NameSite =
  | {
      readonly name: string;
      readonly place: Place;
      readonly chapter: ChapterInWork;
      readonly directive: DirectiveNode;
      /** The node, where a comment of the moves gives the name. */
      readonly at?: { readonly block: BlockInWork; readonly node: number };
      /** The block, where its caption or question gives the name. */
      readonly within?: BlockInWork;
    }
  | { readonly name: string; readonly place: Place; readonly given: GivenName };

/** What all chapters that are being played share. */
export interface CourseInWork {
  readonly chapters: ReadonlyMap<string, ChapterInWork>;
  readonly names: ReadonlyMap<string, NameSite>;
  readonly limits: ModelLimits;
  /** The nodes that names were found to stand for. */
  readonly found: Map<string, ShownNode>;
  /** The stack of blocks being played, each because the one before starts from it. */
  readonly open: BlockInWork[];
  /** The depth of recursion of `playBlock`. */
  depth: number;
}

export function makeChapterInWork(
  syntax: ChapterSyntax,
  order: number,
  budget: number,
): ChapterInWork {
  const blocks: BlockInWork[] = [];
  const byKey = new Map<string, BlockInWork>();
  const chapter: ChapterInWork = {
    syntax,
    blocks,
    byKey,
    order,
    spoken: { directives: {}, moves: {}, unsought: [] },
    problems: [...syntax.problems],
    elsewhere: [],
    asked: new Set(),
    shownAt: new Map(),
    budget: { left: budget },
    isCircular: false,
  };
  for (const [index, block] of syntax.blocks.entries()) {
    const made = makeBlockInWork(block, index, chapter);
    blocks.push(made);
    byKey.set(block.key, made);
  }
  return chapter;
}

function makeBlockInWork(syntax: BlockSyntax, index: number, chapter: ChapterInWork): BlockInWork {
  const lines = (kind: 'answer' | 'also' | 'wrong') =>
    syntax.kind === 'exercise' ? syntax[kind].map(makeTree) : [];
  return {
    syntax,
    chapter,
    index,
    tree: makeTree(movesOf(syntax) ?? noMoves(chapter.syntax.file)),
    lines: { answer: lines('answer'), also: lines('also'), wrong: lines('wrong') },
    state: 'new',
    castled: [],
  };
}

function makeTree(syntax: TreeSyntax): TreeInWork {
  const nodes = syntax.nodes.map(
    (node): NodeInWork => ({ ...node, marks: [], arrows: [], labels: [], statements: [] }),
  );
  return { syntax, nodes };
}

function movesOf(syntax: BlockSyntax): TreeSyntax | undefined {
  if (syntax.kind === 'pattern') return undefined;
  return syntax.kind === 'moves' || syntax.kind === 'game' ? syntax.moves : syntax.after;
}

function noMoves(file: string): TreeSyntax {
  const start = { index: 0, depth: 0, children: [], glyphs: [], after: [] };
  return { file, nodes: [start], comments: [], tags: [] };
}

export function treesOf({ tree, lines }: BlockInWork): TreeInWork[] {
  return [tree, ...lines.answer, ...lines.also, ...lines.wrong];
}

/** The texts of a block that are no comments: captions, questions, hints, texts of patterns. */
export function textsOf(block: BlockSyntax): readonly (RootContent | PhrasingContent)[][] {
  if (block.kind === 'diagram') return [block.caption];
  if (block.kind === 'pattern') return [block.text];
  return block.kind === 'exercise' ? [block.ask, ...block.hints] : [];
}

/** Whether the other side moves first; the block then shows the end of its own moves. */
export function hasBefore(syntax: BlockSyntax): boolean {
  return syntax.kind === 'exercise' && syntax.before === true;
}

/** The index of the main line's last node. */
export function endOfMainLine(nodes: readonly NodeInWork[]): number {
  return mainLine(nodes).at(-1)?.index ?? 0;
}

export function shownIn(block: BlockInWork, node: number): ShownNode | undefined {
  const found = block.tree.nodes[node];
  const ref = { chapter: block.chapter.syntax.file, block: block.syntax.key, node };
  return found && { ref, block, node: found };
}

export function positionOf(shown: ShownNode | undefined): Position | undefined {
  if (shown === undefined) return undefined;
  return 'given' in shown ? shown.given.position : shown.node.position;
}
