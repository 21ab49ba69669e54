/** The positions of a chapter that its texts may speak of. */
import {
  type Block,
  type Chapter,
  castledBefore,
  type MoveNode,
  mainLine,
  movesSpokenOf,
  treesOf,
} from '../../model/index.ts';
import { isAssessment } from '../../movetext/index.ts';
import { moveName } from '../shared/move-name.ts';
import type { CourseView } from '../view/index.ts';
import type { Situation } from './forms/index.ts';
import type { PlainText } from './text.ts';

export interface NamedSituation extends Situation {
  /** `after 7...Be7`, `in this diagram`. */
  readonly where: () => string;
  /** The node, where the chapter's own blocks have one that claims may be made at. */
  readonly node?: MoveNode;
}

/** A position of the chapter for a heading before its first block, which is false only where no position bears it out. */
export function inChapter({ blocks }: Chapter, course: CourseView): NamedSituation | undefined {
  for (const block of blocks) {
    const shown = shownBy(block, course);
    if (shown) return { ...shown, where: () => 'in any position of this chapter' };
  }
  return undefined;
}

export function situationAt(
  tree: readonly MoveNode[],
  index: number,
  block: Block,
  course: CourseView,
): NamedSituation | undefined {
  const node = tree[index];
  const position = node?.position;
  if (!node || !position) return undefined;
  const parent = node.parent === undefined ? undefined : tree[node.parent];
  return {
    position,
    side: course.side,
    assessment: node.glyphs.findLast(isAssessment),
    where: () => (node.written ? `after ${moveName(node, parent)}` : 'where its block begins'),
    castlings: () => castledBefore({ nodes: tree, castled: block.castled }, index),
    covered: () => course.ask('covered', position.key),
    before: () => {
      const positions = [];
      for (let at = parent; at; at = at.parent === undefined ? undefined : tree[at.parent]) {
        if (at.position) positions.push(at.position);
      }
      return positions;
    },
    ...(block.kind === 'moves' && { node }),
  };
}

export function* situationsOf(block: Block, course: CourseView): Generator<Situation> {
  const shown = shownBy(block, course);
  if (shown) yield shown;
  for (const tree of treesOf(block)) {
    for (const { index } of tree) {
      const there = situationAt(tree, index, block, course);
      if (there) yield there;
    }
  }
}

/** The position that a text behind the block speaks of. */
export function shownBy(block: Block, course: CourseView): NamedSituation | undefined {
  if (block.kind === 'pattern') return undefined;
  if (block.kind === 'moves' || block.kind === 'game') {
    const last = block.kind === 'game' ? block.last : (mainLine(block.nodes).at(-1)?.index ?? 0);
    return situationAt(block.nodes, last, block, course);
  }
  const { position } = block;
  if (!position) return undefined;
  return {
    position,
    side: course.side,
    where: () => (block.kind === 'diagram' ? 'in this diagram' : 'in this exercise'),
    castlings: () => castledBefore(block, block.nodes.length === 0 ? 0 : (block.shows?.node ?? 0)),
    covered: () => course.ask('covered', position.key),
    before: () => block.nodes.flatMap((node) => node.position ?? []),
  };
}

/** The positions two moves back, and two on in every line; at its start all of a tree. */
export function* around(
  tree: readonly MoveNode[],
  index: number,
  block: Block,
  course: CourseView,
): Generator<Situation> {
  for (const near of index === 0 ? tree.keys() : nearby(tree, index)) {
    const there = situationAt(tree, near, block, course);
    if (there) yield there;
  }
}

function* nearby(tree: readonly MoveNode[], index: number): Generator<number> {
  const node = tree[index];
  const parent = node?.parent;
  if (parent !== undefined) {
    yield parent;
    const before = tree[parent]?.parent;
    if (before !== undefined) yield before;
  }
  for (const child of node?.children ?? []) {
    yield child;
    yield* tree[child]?.children ?? [];
  }
}

const blocksByKey = new WeakMap<Chapter, ReadonlyMap<string, Block>>();

export function blockOf(chapter: Chapter, key: string): Block | undefined {
  const known =
    blocksByKey.get(chapter) ?? new Map(chapter.blocks.map((block) => [block.key, block]));
  blocksByKey.set(chapter, known);
  return known.get(key);
}

/** The named positions that a text links to. */
export function* linkedIn({ links }: PlainText, course: CourseView): Generator<Situation> {
  for (const { node } of links) {
    const position = node.type === 'positionLink' && course.ask('name', node.label);
    if (!position) continue;
    yield {
      position,
      side: course.side,
      castlings: () => [],
      covered: () => course.ask('covered', position.key),
      before: () => [],
    };
  }
}

/** The moves in inline code that a text mentions. */
export function mentionedIn(text: PlainText, chapter: Chapter, course: CourseView) {
  return function* (): Generator<NamedSituation> {
    for (const { node } of text.moves) {
      for (const ref of movesSpokenOf(chapter, node)) {
        const block = ref && blockOf(chapter, ref.block);
        const there = block && situationAt(block.nodes, ref.node, block, course);
        if (there) yield there;
      }
    }
  };
}
