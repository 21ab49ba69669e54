import type { PhrasingContent } from 'mdast';
import type { Place, Point } from '../../diagnostics/index.ts';
import type { Comment, Line, Movetext, WrittenMove } from '../../movetext/index.ts';
import type { BlockContext } from '../blocks/block-context.ts';
import type {
  CommentNode,
  TreeSyntax,
  VariationNode,
  WrittenInFile,
  WrittenNode,
} from '../types.ts';

interface NodeInWork extends WrittenNode {
  parent?: number;
  written?: WrittenInFile;
  glyphs: number[];
  readonly children: number[];
  after: (CommentNode | VariationNode)[];
}

/** Browsers flatten HTML that is nested too deep, and no reader can follow such variations. */
const deepestVariation = 40;

/** Where movetext is in its file, and how to read its comments. */
export interface MovetextPlace {
  readonly file: string;
  /** From an offset in the movetext to its point in the file. */
  readonly pointAt: (offset: number) => Point;
  readonly readComment: (comment: Comment) => PhrasingContent[];
  readonly report: BlockContext['reportMoves'];
}

/**
 * Flattens movetext into nodes: the start position, then the moves in the order of the text.
 * Variations that lie too deep are left out, with a problem.
 */
export function flattenMovetext(
  movetext: Movetext,
  { file, pointAt, readComment, report }: MovetextPlace,
): TreeSyntax {
  const place = (span: { start: number; end: number }): Place => ({
    file,
    start: pointAt(span.start),
    end: pointAt(span.end),
  });
  const nodes: NodeInWork[] = [emptyNode({ index: 0, depth: 0 })];
  const comments: { node: number; content: PhrasingContent[] }[] = [];
  const [problem] = movetext.problems;
  let unread = problem && place(problem.span);
  const makeComment = (comment: Comment, node: number): CommentNode => {
    const content = readComment(comment);
    comments.push({ node, content });
    return { type: 'comment', content, place: place(comment.outer) };
  };

  const [root] = nodes;
  const stack: Walk[] = [{ line: movetext.line, depth: 0, at: 0, item: 0, node: 0 }];
  if (root) root.after = movetext.line.before.map((comment) => makeComment(comment, 0));
  for (let walk = stack.at(-1); walk; walk = stack.at(-1)) {
    const current = nodes[walk.node];
    const item = walk.at > 0 ? walk.line.moves[walk.at - 1]?.after[walk.item] : undefined;
    if (item && current) {
      walk.item++;
      if (item.type === 'comment') current.after.push(makeComment(item, current.index));
      else if (walk.depth >= deepestVariation) {
        const at = place({ start: item.span.start, end: item.span.start + 1 });
        unread ??= at;
        report({
          place: at,
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
      addMove(nodes, walk, { written: writtenInFile(move, place), move });
      walk.at++;
      walk.item = 0;
    } else stack.pop();
  }
  const result = movetext.line.result?.text;
  return {
    file,
    nodes,
    comments,
    tags: movetext.tags.map(({ name, value, valueSpan }) => ({
      name,
      value,
      place: place(valueSpan),
    })),
    ...(result === undefined ? {} : { result }),
    ...(unread === undefined ? {} : { unread }),
  };
}

/** A line being walked: `at` is the next move, `item` the next thing after the move before it. */
interface Walk {
  readonly line: Line;
  readonly depth: number;
  at: number;
  item: number;
  /** Index of the node whose position the next move is played in. */
  node: number;
}

function addMove(
  nodes: NodeInWork[],
  walk: Walk,
  { written, move }: { readonly written: WrittenInFile; readonly move: WrittenMove },
): void {
  const parent = nodes[walk.node];
  const node = emptyNode({ index: nodes.length, depth: walk.depth });
  node.parent = walk.node;
  node.written = written;
  node.glyphs = move.glyphs.map(({ nag }) => nag);
  nodes.push(node);
  parent?.children.push(node.index);
  walk.node = node.index;
}

function emptyNode(base: { index: number; depth: number }): NodeInWork {
  return { ...base, children: [], glyphs: [], after: [] };
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
