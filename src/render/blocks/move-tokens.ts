import type { CommentNode, MoveNode, VariationNode } from '../../model/index.ts';

/** Moves and brackets in the order of the text, for the layout. */
export type MoveToken =
  | { readonly kind: 'move'; readonly node: MoveNode }
  | { readonly kind: 'comment'; readonly comment: CommentNode }
  | { readonly kind: 'open'; readonly variation: VariationNode; readonly siblings: Siblings }
  | { readonly kind: 'close' };

/** The variations beside one move, in order. */
export type Siblings = readonly VariationNode[];

interface Frame {
  /** The current move; its `after` is done up to `done`. */
  readonly node: MoveNode;
  done: number;
  /** Found once, since a move may have thousands. */
  siblings?: Siblings;
}

/** Iterative, since variations may be nested deep. */
export function* moveTokens(nodes: readonly MoveNode[]): Generator<MoveToken, void, undefined> {
  const [start] = nodes;
  if (start === undefined) return;
  const open: Frame[] = [{ node: start, done: 0 }];
  for (let frame = open.at(-1); frame !== undefined; frame = open.at(-1)) {
    const item = frame.node.after[frame.done++];
    if (item?.type === 'comment') {
      yield { kind: 'comment', comment: item };
    } else if (item?.type === 'variation') {
      const first = nodes[item.first];
      if (first === undefined) continue;
      frame.siblings ??= frame.node.after.filter((each) => each.type === 'variation');
      yield { kind: 'open', variation: item, siblings: frame.siblings };
      for (const comment of item.before) yield { kind: 'comment', comment };
      yield { kind: 'move', node: first };
      open.push({ node: first, done: 0 });
    } else {
      open.pop();
      const [continuation] = frame.node.children;
      const next = continuation === undefined ? undefined : nodes[continuation];
      if (next !== undefined) {
        yield { kind: 'move', node: next };
        open.push({ node: next, done: 0 });
      } else if (open.length > 0) {
        yield { kind: 'close' };
      }
    }
  }
}
