import type { PhrasingContent, RootContent } from 'mdast';
import type { BlockDraft, ExerciseDraft, MovetextDraft, NodeRef } from '../read/index.ts';
import { type BlockTree, makeBlockTree, type TreeNode } from './block-tree.ts';
import { mainLine } from './main-line.ts';

/** A block while the model is being made. */
export interface BlockInWork {
  readonly draft: BlockDraft;
  /** The tree that the block's references lead into. */
  readonly tree: BlockTree;
  /** The lines of an exercise: trees that start from its position and that nothing refers to. */
  readonly lines: Readonly<Record<'answer' | 'also' | 'wrong', readonly BlockTree[]>>;
  state: 'new' | 'open' | 'played';
  /** The node whose position a text behind the block speaks of. */
  shows?: NodeRef | undefined;
}

export function makeBlockInWork(draft: BlockDraft, chapter: string): BlockInWork {
  const lines = (kind: 'answer' | 'also' | 'wrong') =>
    draft.kind === 'exercise' ? draft[kind].map((line) => makeBlockTree(line, chapter)) : [];
  const file = draft.kind === 'game' ? draft.file : chapter;
  return {
    draft,
    tree: makeBlockTree(movesOf(draft) ?? noMoves, file),
    lines: { answer: lines('answer'), also: lines('also'), wrong: lines('wrong') },
    state: 'new',
  };
}

export function treesOf({ tree, lines }: BlockInWork): BlockTree[] {
  return [tree, ...lines.answer, ...lines.also, ...lines.wrong];
}

/** The texts of a block that belong to no move: captions, questions, hints. */
export function textsOfDraft(draft: BlockDraft): (RootContent | PhrasingContent)[][] {
  if (draft.kind === 'diagram') return [draft.caption];
  return draft.kind === 'exercise' ? [(draft as ExerciseDraft).ask, draft.hint] : [];
}

function movesOf(draft: BlockDraft): MovetextDraft | undefined {
  if (draft.kind === 'pattern') return undefined;
  return draft.kind === 'moves' || draft.kind === 'game' ? draft.moves : draft.after;
}

const noMoves: MovetextDraft = {
  movetext: { tags: [], line: { before: [], moves: [], span: { start: 0, end: 0 } }, problems: [] },
  file: '',
  pointAt: (offset) => ({ line: 1, column: 1, offset }),
  comments: new Map(),
};

/** The index of the main line's last node. */
export function endOfMainLine(nodes: readonly TreeNode[]): number {
  return mainLine(nodes).at(-1)?.index ?? 0;
}
