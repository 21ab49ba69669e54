import { type LinkTargets, linkTargets } from '../addresses/index.ts';
import type { Place } from '../diagnostics/index.ts';
import {
  type Block,
  type BlockOutline,
  type Chapter,
  type CourseLinkNode,
  diagramsIn,
  firstSign,
  type GivenName,
  judgementsOf,
  type MoveNode,
  type MovesBlock,
  type NodeOutline,
  outlineBlock,
  type Side,
  textNodes,
  walkText,
} from '../model/index.ts';
import { isAssessment } from '../movetext/index.ts';
import { type Allowance, findAllowances } from './allowances.ts';
import { comingBack } from './coming-back.ts';
import { moveName } from './shared/move-name.ts';

/**
 * What the rest of a course may ask of a chapter: its names and positions, nothing of its words. While it
 * stays equal, nothing beyond the chapter needs to be checked again.
 */
export interface ChapterSummary {
  readonly file: string;
  readonly id: string;
  readonly names: readonly GivenName[];
  readonly targets: LinkTargets;
  readonly blocks: readonly BlockSummary[];
  /** The keys of its diagrams that show a position; absent without any. */
  readonly diagrams?: readonly string[];
  readonly patterns: readonly Place[];
  readonly allowances: readonly Allowance[];
  readonly judgements: readonly DatedJudgement[];
  /** What it links to in other courses, as `course/label`; absent where it does not. */
  readonly siblings?: readonly string[];
}

/** What stands where the date of a `:judge[…]` stands; it may be no date. */
export interface DatedJudgement {
  readonly date: string;
  readonly place: Place;
}

/** A `moves` block. */
export interface BlockSummary extends BlockOutline {
  /** The names that the text right below it links to. */
  readonly below?: readonly string[];
  readonly nodes: readonly NodeSummary[];
}

export interface NodeSummary extends NodeOutline {
  /** `7...Be7`; empty for a start position. */
  readonly name: string;
  /** The author's last assessment of it. */
  readonly verdict?: number;
  /** Whether it is reached through a `?` or `??` of the course's own side; of either in a course for both. */
  readonly refuted?: true;
  /** Whether the move is called an alternative, by `:option`. */
  readonly option?: true;
  /** Whether the move is one of the course's side that is called bad. */
  readonly rejected?: true;
  /** Whether `:end[…]` says that its line stops here on purpose. */
  readonly ended?: true;
  /** The names that are promised for later behind it. */
  readonly promises?: readonly string[];
  readonly leaf?: true;
  /** Whether the position has stood before in its own line. */
  readonly again?: true;
  /** The named positions that it is said to be, or whose names are linked to behind it. */
  readonly tells?: readonly string[];
  /** The place in the chapter: of the move; of the block's first sign for a start position. */
  readonly at: CompactPlace;
}

/** Line, column and offset of the start and of the end: half of what is kept of a course are places. */
export type CompactPlace = readonly [number, number, number, number, number, number];

function compactPlace({ start, end }: Place): CompactPlace {
  return [start.line, start.column, start.offset, end.line, end.column, end.offset];
}

export function expandPlace(file: string, at: CompactPlace): Place {
  const [line, column, offset, endLine, endColumn, endOffset] = at;
  return {
    file,
    start: { line, column, offset },
    end: { line: endLine, column: endColumn, offset: endOffset },
  };
}

export function summariseChapter(chapter: Chapter, side: Side): ChapterSummary {
  const { file, id, names, blocks } = chapter;
  const below = linksBelow(chapter);
  const siblings = courseLinks(chapter);
  const diagrams = diagramsIn(chapter);
  return {
    file,
    id,
    names,
    targets: linkTargets(chapter),
    blocks: blocks.flatMap((block) =>
      block.kind === 'moves' ? [summariseBlock(block, side, below.get(block) ?? [])] : [],
    ),
    ...(diagrams.length > 0 && { diagrams }),
    patterns: blocks.flatMap(({ kind, place }) => (kind === 'pattern' ? [place] : [])),
    allowances: findAllowances(chapter),
    judgements: judgementsOf(chapter).flatMap(({ date, datePlace }) =>
      date === undefined || !datePlace ? [] : [{ date, place: datePlace }],
    ),
    ...(siblings.length > 0 && { siblings }),
  };
}

function summariseBlock(block: MovesBlock, side: Side, below: readonly string[]): BlockSummary {
  const again = comingBack(block);
  const refuted = refutedIn(block, side);
  const outline = outlineBlock(block, side);
  const nodes: NodeSummary[] = [];
  for (const outlined of outline.nodes) {
    const node = block.nodes[outlined.index];
    if (node === undefined) continue;
    const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
    // Filled in field by field, since most nodes have few of them.
    const summary: { -readonly [Field in keyof NodeSummary]: NodeSummary[Field] } = {
      ...outlined,
      name: node.written ? moveName(node, parent) : '',
      at: compactPlace(placeOf(node, block)),
    };
    const verdict = node.glyphs.findLast(isAssessment);
    if (verdict !== undefined) summary.verdict = verdict;
    if (refuted.has(node.index)) summary.refuted = true;
    if (says(node, 'option')) summary.option = true;
    if (outlined.bad !== undefined && node.move?.color === side) summary.rejected = true;
    if (says(node, 'end')) summary.ended = true;
    const promises = argumentsOf(node, 'later');
    if (promises.length > 0) summary.promises = promises;
    if (node.children.length === 0) summary.leaf = true;
    if (again.has(node.index)) summary.again = true;
    const tells = [...argumentsOf(node, 'same'), ...linkedNames(node)];
    if (tells.length > 0) summary.tells = tells;
    nodes.push(summary);
  }
  return {
    ...outline,
    ...(below.length > 0 ? { below } : {}),
    nodes,
  };
}

function says(node: MoveNode, statement: 'option' | 'end'): boolean {
  return node.statements.some(({ name }) => name === statement);
}

function courseLinks(chapter: Chapter): string[] {
  return [...new Set(textNodes(chapter, 'courseLink').map(siblingAsked))];
}

/** A link into another course in the words of the question `sibling`. */
export function siblingAsked({ course, label }: Pick<CourseLinkNode, 'course' | 'label'>): string {
  return `${course}/${label}`;
}

/** The names that the text between each block and the next one, or the next heading, links to. */
function linksBelow({ body, blocks }: Chapter): ReadonlyMap<Block, readonly string[]> {
  const below = new Map<Block, string[]>();
  let names: string[] = [];
  for (const node of body.children) {
    if (node.type === 'courseBlock') {
      names = [];
      const block = blocks[node.block];
      if (block) below.set(block, names);
    } else if (node.type === 'heading') names = [];
    walkText([node], (inner) => {
      if (inner.type === 'positionLink') names.push(inner.label);
    });
  }
  return below;
}

/** The nodes behind a move that the course calls a mistake of its own side. */
function refutedIn({ nodes }: MovesBlock, side: Side): ReadonlySet<number> {
  const refuted = new Set<number>();
  for (const { index, parent, move, glyphs } of nodes) {
    const isMistake = glyphs.includes(2) || glyphs.includes(4);
    const isOwn = isMistake && move && (side === 'both' || move.color === side);
    if (isOwn || (parent !== undefined && refuted.has(parent))) refuted.add(index);
  }
  return refuted;
}

/** The move that led to the node; for a start position the first sign of its block. */
export function placeOf(node: MoveNode, { place }: { readonly place: Place }): Place {
  return node.written?.place ?? firstSign(place);
}

function argumentsOf({ statements }: MoveNode, statement: 'later' | 'same'): string[] {
  return statements.flatMap(({ name, argument }) => (name === statement ? [argument] : []));
}

/** Whether a comment behind a node's move links into another course. */
export function linksElsewhere(node: MoveNode): boolean {
  let found = false;
  for (const item of node.after) {
    if (item.type !== 'comment') continue;
    walkText(item.content, ({ type }) => {
      if (type === 'courseLink') found = true;
    });
  }
  return found;
}

/** The names that the comments behind a node's move link to. */
export function linkedNames(node: MoveNode): string[] {
  const names: string[] = [];
  for (const item of node.after) {
    if (item.type !== 'comment') continue;
    walkText(item.content, (inner) => {
      if (inner.type === 'positionLink') names.push(inner.label);
    });
  }
  return names;
}
