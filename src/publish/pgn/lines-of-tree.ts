import type { CommentNode, MoveNode } from '../../model/index.ts';
import type { PlainComment, PlainLine, PlainMove, PlainVariation } from '../../movetext/index.ts';
import { plainWords, type WordsContext } from './plain-words.ts';

/**
 * The moves of a tree as movetext, with their variations, glyphs and comments. The first line
 * begins with the move of index `first`; without one it has no moves. No tree is deeper than its
 * check allows, so that this may call itself once a level.
 */
export function linesOfTree(
  nodes: readonly MoveNode[],
  first: number | undefined,
  before: readonly CommentNode[],
  context: WordsContext,
): PlainLine {
  const moves: PlainMove[] = [];
  for (let node = nodes[first ?? -1]; node; node = nodes[node.children[0] ?? -1]) {
    moves.push({
      san: { text: node.move?.san ?? node.written?.san ?? '' },
      glyphs: node.glyphs.map((nag) => ({ nag })),
      after: node.after.flatMap((item): (PlainComment | PlainVariation)[] =>
        item.type === 'comment'
          ? commentOf([item], context)
          : [
              {
                type: 'variation',
                line: linesOfTree(nodes, item.first, item.before, context),
              },
            ],
      ),
    });
  }
  return { before: before.flatMap((each) => commentOf([each], context)), moves };
}

function commentOf(comments: readonly CommentNode[], context: WordsContext): PlainComment[] {
  return comments.flatMap(({ content }) => comment(plainWords(content, context)));
}

/** A comment of these words, if there are any. */
export function comment(text: string): PlainComment[] {
  return text === '' ? [] : [{ type: 'comment', form: 'brace', text }];
}
