import { type Color, writePlacement } from '../chess/index.ts';
import type { Place } from '../diagnostics/index.ts';
import {
  type DiagramDraft,
  type ExerciseDraft,
  type GameDraft,
  type MovetextDraft,
  type NodeRef,
  type PatternDraft,
  type PlacedText,
  parseArrow,
} from '../read/index.ts';
import { type BlockInWork, endOfMainLine } from './block-in-work.ts';
import type { TreeNode } from './block-tree.ts';
import { mainLine } from './main-line.ts';
import type { Block, LabelUse, Statement } from './types.ts';

/** Where a block stands, and how it looks up what lies outside it. */
export interface BlockPlace {
  readonly index: number;
  readonly chapter: number;
  /** The side at the bottom where the block does not say. */
  readonly view: Color;
  readonly nodeAt: (ref: NodeRef) => TreeNode | undefined;
  readonly keyOfLabel: (name: string) => string | undefined;
  readonly report: (place: Place, message: string, hint: string) => void;
}

/**
 * A block of the finished model. What needs the graph, the exits of games and the matches of
 * patterns, is put in by `buildCourse`.
 */
export function finishBlock(block: BlockInWork, place: BlockPlace): Block {
  const { draft, tree } = block;
  const base = {
    index: place.index,
    chapter: place.chapter,
    place: draft.place,
    view: draft.view ?? place.view,
  };
  switch (draft.kind) {
    case 'moves':
      return {
        ...base,
        kind: 'moves',
        nodes: tree.nodes,
        ...(draft.from ? { from: labelUse(draft.from) } : {}),
        ...tagsAndResult(draft.moves, block),
      };
    case 'diagram':
      return { ...base, kind: 'diagram', ...position(draft, block, place), ...drawn(draft, block) };
    case 'exercise':
      return {
        ...base,
        kind: 'exercise',
        ...position(draft, block, place),
        ...question(draft, block),
      };
    case 'game':
      return { ...base, kind: 'game', ...game(draft, block, place) };
    case 'pattern':
      return { ...base, kind: 'pattern', nodes: [], ...pattern(draft) };
  }
}

function position(
  draft: DiagramDraft | ExerciseDraft,
  { tree, shows }: BlockInWork,
  { nodeAt }: BlockPlace,
) {
  const node = shows && nodeAt(shows);
  return {
    nodes: draft.at ? [] : tree.nodes,
    ...(node?.position ? { position: node.position } : {}),
    ...(node?.move ? { lastMove: { from: node.move.from, to: node.move.to } } : {}),
    ...(shows ? { shows } : {}),
    ...(draft.at ? { at: labelUse(draft.at) } : {}),
  };
}

function drawn(draft: DiagramDraft, { tree, shows }: BlockInWork) {
  // What the text behind a diagram says of its board is drawn on it too.
  const said = draft.at || !shows ? undefined : tree.nodes[shows.node];
  return {
    caption: draft.caption,
    ...(draft.alt === undefined ? {} : { alt: draft.alt }),
    marks: [...draft.marks.map(({ text }) => text), ...(said?.marks ?? [])],
    arrows: [
      ...draft.arrows.map(({ text, meaning }) => ({ meaning, ...parseArrow(text) })),
      ...(said?.arrows ?? []),
    ],
    claims: draft.claims.map(
      ({ text, place }): Statement => ({ name: 'claim', argument: text, place }),
    ),
  };
}

function question(draft: ExerciseDraft, { lines }: BlockInWork) {
  return {
    ask: draft.ask,
    hint: draft.hint,
    answer: lines.answer.map(({ nodes }) => nodes),
    also: lines.also.map(({ nodes }) => nodes),
    wrong: lines.wrong.map(({ nodes }) => nodes),
  };
}

function game(draft: GameDraft, block: BlockInWork, place: BlockPlace) {
  const { nodes } = block.tree;
  const unknownLimits: LabelUse[] = [];
  const limit = (text: PlacedText | undefined, which: 'first' | 'last', otherwise: number) => {
    if (!text) return otherwise;
    const found = findLimit(text.text, which, nodes, place.keyOfLabel);
    if (found === undefined) unknownLimits.push(labelUse(text));
    return found ?? otherwise;
  };
  const first = limit(draft.from, 'first', 0);
  const last = limit(draft.to, 'last', endOfMainLine(nodes));
  if (last <= first && draft.to && unknownLimits.length === 0) {
    const from = draft.from ? `\`${draft.from.text}\`` : 'its start';
    place.report(
      draft.to.place,
      `The game has no move from ${from} to \`${draft.to.text}\`.`,
      'Let the second of the two come later in the game than the first.',
    );
  }
  const tag = draft.moves?.movetext.tags.find(({ name }) => name === 'Result');
  const pointAt = draft.moves?.pointAt;
  return {
    nodes,
    file: draft.file,
    first,
    last: Math.max(first, last),
    unknownLimits,
    ...(tag && pointAt
      ? {
          resultTag: {
            value: tag.value,
            place: {
              file: draft.file,
              start: pointAt(tag.valueSpan.start),
              end: pointAt(tag.valueSpan.end),
            },
          },
        }
      : {}),
    ...tagsAndResult(draft.moves, block),
  };
}

/** A move number, `from` before White's move and `to` behind Black's, or a named position. */
function findLimit(
  text: string,
  which: 'first' | 'last',
  nodes: readonly TreeNode[],
  keyOfLabel: (name: string) => string | undefined,
): number | undefined {
  const number = /^\d+$/.test(text) ? Number(text) : undefined;
  const key = number === undefined ? keyOfLabel(text) : undefined;
  const line = mainLine(nodes);
  if (number === undefined) {
    return key === undefined
      ? undefined
      : line.find(({ position }) => position?.key === key)?.index;
  }
  const isMove = ({ move }: TreeNode) => move?.number === number;
  if (which === 'last') return line.findLast(isMove)?.index;
  // The position before the move; the start has no move, so there always is one.
  return line[line.findIndex(isMove) - 1]?.index;
}

function tagsAndResult(moves: MovetextDraft | undefined, { tree }: BlockInWork) {
  const tags = moves?.movetext.tags.map(({ name, value }) => [name, value] as const) ?? [];
  return {
    tags: Object.fromEntries(tags) as Record<string, string>,
    ...(tree.result === undefined ? {} : { result: tree.result }),
  };
}

function pattern(draft: PatternDraft) {
  const pieces = draft.pieces.map(({ color, kind, square }) => ({ color, kind, square }));
  // Two pieces on one square are a problem that the reader has told: the first one stands.
  const board = new Map(pieces.toReversed().map(({ square, ...piece }) => [square, piece]));
  return {
    title: draft.title,
    pieces,
    empty: draft.empty.map(({ text }) => text),
    at: draft.at.map(labelUse),
    reversed: draft.reversed,
    placement: writePlacement(board),
    matches: [],
  };
}

function labelUse({ text, place }: PlacedText): LabelUse {
  return { name: text, place };
}
