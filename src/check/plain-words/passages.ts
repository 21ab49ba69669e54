/** The texts of a chapter, each with the positions that it may speak of. */
import type { PhrasingContent, RootContent } from 'mdast';
import type { Place } from '../../diagnostics/index.ts';
import {
  type Block,
  type Chapter,
  castledBefore,
  type MoveNode,
  mainLine,
  movesSpokenOf,
  treesOf,
} from '../../model/index.ts';
import { moveName } from '../shared/move-name.ts';
import type { CourseView } from '../view/index.ts';
import type { Situation } from './forms/index.ts';
import { type PlainText, plainText } from './text.ts';

/** A situation, and what it is called. */
export interface Shown extends Situation {
  /** `after 7...Be7`, `in this diagram`. */
  readonly where: () => string;
  /** The node, where the chapter's own blocks have one that claims may be made at. */
  readonly node?: MoveNode;
}

export interface Passage {
  readonly text: PlainText;
  readonly kind: 'comment' | 'prose' | 'heading' | 'row' | 'caption' | 'question';
  /** The position that it speaks of. */
  readonly shown?: Shown;
  /** Whether it stands before what it speaks of, or among many positions, so that all of them count. */
  readonly loose: boolean;
  /** Where else it may look. */
  readonly near: () => Iterable<Situation>;
  /** The place of the whole, for a text whose own places are not known. */
  readonly place?: Place;
  /** Whether a directive may be put behind its sentences. */
  readonly takesClaims: boolean;
}

/** Every text of a chapter, in order. */
export function* passagesOf(chapter: Chapter, course: CourseView): Generator<Passage> {
  const { file, blocks } = chapter;
  let shown: Shown | undefined;
  let last = -1;
  const around = (from: number, to: number) =>
    function* (): Generator<Situation> {
      for (const block of blocks.slice(Math.max(0, from), to + 1))
        yield* situationsOf(block, course);
    };
  function* visit(nodes: readonly RootContent[], isNote: boolean): Generator<Passage> {
    for (const node of nodes) {
      if (node.type === 'courseBlock') {
        const block = blocks[node.block];
        if (!block) continue;
        last = node.block;
        yield* passagesOfBlock(block, chapter, course);
        shown = shownBy(block, course) ?? shown;
      } else if (node.type === 'paragraph' || node.type === 'heading' || node.type === 'tableRow') {
        const text = plainText(node.children, file);
        const wide = isNote || node.type !== 'paragraph';
        const before = shown ?? (node.type === 'heading' ? inChapter(chapter, course) : undefined);
        const mentioned = mentionedIn(text, chapter, course);
        const [from, to] = wide ? [0, blocks.length] : [last - 1, last + 1];
        yield {
          text,
          kind: node.type === 'heading' ? 'heading' : node.type === 'tableRow' ? 'row' : 'prose',
          ...(before && { shown: before }),
          loose: true,
          near: function* () {
            yield* mentioned();
            yield* linkedIn(text, course);
            yield* around(from, to)();
          },
          takesClaims: node.type === 'paragraph' && !isNote && text.moves.length === 0,
        };
        if (text.moves.length > 0) shown = [...mentioned()].at(-1) ?? shown;
      } else if ('children' in node) {
        yield* visit(node.children as RootContent[], isNote || node.type === 'footnoteDefinition');
      }
    }
  }
  yield* visit(chapter.body.children, false);
}

/** A position of the chapter for a heading before its first block, which is false only where no position bears it out. */
function inChapter({ blocks }: Chapter, course: CourseView): Shown | undefined {
  for (const block of blocks) {
    const shown = shownBy(block, course);
    if (shown) return { ...shown, where: () => 'in any position of this chapter' };
  }
  return undefined;
}

function* passagesOfBlock(block: Block, chapter: Chapter, course: CourseView): Generator<Passage> {
  for (const tree of treesOf(block)) {
    for (const node of tree) {
      for (const item of node.after) {
        if (item.type === 'comment') yield commentOn(node.index, item.content, false);
        else {
          for (const comment of item.before) {
            yield commentOn(tree[item.first]?.parent ?? node.index, comment.content, true);
          }
        }
      }
    }
    function commentOn(
      index: number,
      content: readonly PhrasingContent[],
      isBefore: boolean,
    ): Passage {
      const text = plainText(content, fileOf(tree, block, chapter));
      const shown = situationAt(tree, index, block, course);
      const mentioned = mentionedIn(text, chapter, course);
      const isStart = index === 0;
      return {
        text,
        kind: 'comment',
        ...(shown && { shown }),
        loose: isBefore || isStart,
        near: function* () {
          yield* mentioned();
          yield* linkedIn(text, course);
          for (const near of isStart ? tree.keys() : nearby(tree, index)) {
            const there = situationAt(tree, near, block, course);
            if (there) yield there;
          }
        },
        takesClaims: block.kind === 'moves' && !isBefore && text.moves.length === 0,
      };
    }
  }
  if (block.kind !== 'diagram' && block.kind !== 'exercise') return;
  const texts = block.kind === 'diagram' ? [block.caption] : [block.ask, ...block.hints];
  const shown = shownBy(block, course);
  const kind = block.kind === 'diagram' ? 'caption' : 'question';
  const around = function* (text: PlainText): Generator<Situation> {
    yield* mentionedIn(text, chapter, course)();
    yield* linkedIn(text, course);
    yield* situationsOf(block, course);
  };
  for (const content of texts) {
    const text = plainText(content, chapter.file);
    if (text.text === '') continue;
    yield {
      text,
      kind,
      ...(shown && { shown }),
      loose: kind === 'question',
      near: () => around(text),
      takesClaims: false,
    };
  }
  if (block.kind === 'diagram' && block.alt !== undefined) {
    const text = { ...plainText([], chapter.file), text: block.alt };
    yield {
      text,
      kind,
      ...(shown && { shown }),
      loose: false,
      near: () => around(text),
      place: block.place,
      takesClaims: false,
    };
  }
}

/** A game's comments stand in the game's own file. */
function fileOf(tree: readonly MoveNode[], block: Block, chapter: Chapter): string {
  const written = tree.find((node) => node.written)?.written?.place.file;
  return block.kind === 'game' ? (written ?? block.file) : chapter.file;
}

/** Two moves back, and two on in every line. */
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

function situationAt(
  tree: readonly MoveNode[],
  index: number,
  block: Block,
  course: CourseView,
): Shown | undefined {
  const node = tree[index];
  const position = node?.position;
  if (!node || !position) return undefined;
  const parent = node.parent === undefined ? undefined : tree[node.parent];
  return {
    position,
    side: course.side,
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

/** Every position of a block. */
function* situationsOf(block: Block, course: CourseView): Generator<Situation> {
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
function shownBy(block: Block, course: CourseView): Shown | undefined {
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

const blocksByKey = new WeakMap<Chapter, ReadonlyMap<string, Block>>();

function blockOf(chapter: Chapter, key: string): Block | undefined {
  const known =
    blocksByKey.get(chapter) ?? new Map(chapter.blocks.map((block) => [block.key, block]));
  blocksByKey.set(chapter, known);
  return known.get(key);
}

/** The named positions that a text links to. */
function* linkedIn({ links }: PlainText, course: CourseView): Generator<Situation> {
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
function mentionedIn(text: PlainText, chapter: Chapter, course: CourseView) {
  return function* (): Generator<Shown> {
    for (const { node } of text.moves) {
      for (const ref of movesSpokenOf(chapter, node)) {
        const block = ref && blockOf(chapter, ref.block);
        const there = block && situationAt(block.nodes, ref.node, block, course);
        if (there) yield there;
      }
    }
  };
}
