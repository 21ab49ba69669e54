import type { PhrasingContent } from 'mdast';
import type { Place } from '../diagnostics/index.ts';
import type { Comment, Line, WrittenMove } from '../movetext/types.ts';
import type { CourseProblem, MovetextDraft } from '../read/index.ts';
import type { CommentNode, MoveNode, VariationNode, WrittenInFile } from './types.ts';

type Mutable<T> = { -readonly [Key in keyof T]: T[Key] };

/** A node while the model is being made; the finished model is read-only. */
export type TreeNode = Omit<
  Mutable<MoveNode>,
  'children' | 'after' | 'marks' | 'arrows' | 'labels' | 'statements'
> & {
  children: number[];
  after: (CommentNode | VariationNode)[];
  marks: MoveNode['marks'][number][];
  arrows: MoveNode['arrows'][number][];
  labels: string[];
  statements: Mutable<MoveNode['statements'][number]>[];
};

/** A comment and the node whose position it speaks of. */
export interface PlacedComment {
  readonly node: number;
  readonly content: PhrasingContent[];
}

export interface BlockTree {
  readonly nodes: TreeNode[];
  /** Every comment in the order of the text. */
  readonly comments: readonly PlacedComment[];
  readonly result?: string;
  readonly problems: readonly CourseProblem[];
}

/** Browsers flatten HTML that is nested too deep, and no reader can follow variations so far. */
export const deepestVariation = 40;

/**
 * Flattens movetext into nodes: the start position, then the moves in the order of the text.
 * Nothing is played. Variations that lie too deep are left out, with a problem.
 */
export function makeBlockTree(draft: MovetextDraft, file: string): BlockTree {
  const place = (span: { start: number; end: number }): Place => ({
    file,
    start: draft.pointAt(span.start),
    end: draft.pointAt(span.end),
  });
  const nodes: TreeNode[] = [emptyNode({ index: 0, depth: 0 })];
  const comments: PlacedComment[] = [];
  const problems: CourseProblem[] = [];
  const makeComment = (comment: Comment, node: number): CommentNode => {
    const content = draft.comments.get(comment) ?? [];
    comments.push({ node, content });
    return { type: 'comment', content, place: place(comment.outer) };
  };

  // A line being walked: `at` is the next move, `item` the next thing after the move before it.
  interface Walk {
    readonly line: Line;
    readonly depth: number;
    at: number;
    item: number;
    /** Index of the node whose position the next move is played in. */
    node: number;
  }
  const addMove = (walk: Walk, move: WrittenMove): void => {
    const parent = nodes[walk.node];
    const node = emptyNode({ index: nodes.length, depth: walk.depth });
    node.parent = walk.node;
    node.written = writtenInFile(move, place);
    node.glyphs = move.glyphs.map(({ nag }) => nag);
    nodes.push(node);
    parent?.children.push(node.index);
    walk.node = node.index;
  };
  const [root] = nodes;
  const stack: Walk[] = [{ line: draft.movetext.line, depth: 0, at: 0, item: 0, node: 0 }];
  if (root) root.after = draft.movetext.line.before.map((comment) => makeComment(comment, 0));
  for (let walk = stack.at(-1); walk; walk = stack.at(-1)) {
    const current = nodes[walk.node];
    const item = walk.at > 0 ? walk.line.moves[walk.at - 1]?.after[walk.item] : undefined;
    if (item && current) {
      walk.item++;
      if (item.type === 'comment') current.after.push(makeComment(item, current.index));
      else if (walk.depth >= deepestVariation) {
        problems.push({
          rule: 'move-unreadable',
          place: place({ start: item.span.start, end: item.span.start + 1 }),
          message: `This variation is nested ${walk.depth + 1} deep; a page can show ${deepestVariation} levels.`,
          hint: 'Name the position before it with `:here[…]` and go on in a new block with from="…".',
        });
      } else {
        const parent = current.parent ?? 0;
        current.after.push({
          type: 'variation',
          first: nodes.length,
          before: item.line.before.map((comment) => makeComment(comment, parent)),
          place: place(item.span),
        });
        stack.push({ line: item.line, depth: walk.depth + 1, at: 0, item: 0, node: parent });
      }
      continue;
    }
    const move = walk.line.moves[walk.at];
    if (move) {
      addMove(walk, move);
      walk.at++;
      walk.item = 0;
    } else stack.pop();
  }
  const result = draft.movetext.line.result?.text;
  return { nodes, comments, problems, ...(result === undefined ? {} : { result }) };
}

function emptyNode(base: { index: number; depth: number }): TreeNode {
  return {
    ...base,
    children: [],
    glyphs: [],
    after: [],
    marks: [],
    arrows: [],
    labels: [],
    statements: [],
  };
}

function writtenInFile(
  move: WrittenMove,
  place: (span: { start: number; end: number }) => Place,
): WrittenInFile {
  const { number } = move;
  return {
    san: move.san.text,
    place: place(move.san.span),
    ...(number
      ? {
          number: {
            text: number.text,
            value: number.value,
            dots: number.dots,
            place: place(number.span),
          },
        }
      : {}),
    glyphs: move.glyphs.map(({ text, nag, span }) => ({ text, nag, place: place(span) })),
  };
}
