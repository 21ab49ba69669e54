import type { GameBlock, MoveNode } from '../../../model/index.ts';
import type { PlainComment, PlainLine, PlainVariation } from '../../../movetext/index.ts';
import type { BlockGame, WrittenBlock } from './block-game.ts';
import { brace } from './packed-line.ts';

/** A game that a block takes from a file: its moves come along, since a reader has no such file. */
export function gameOfFile(block: GameBlock, { attributes }: WrittenBlock): BlockGame {
  const [root] = block.nodes;
  const before = (root?.after ?? []).flatMap((item) =>
    item.type === 'comment' ? wordsOf(item) : [],
  );
  return {
    kind: 'game',
    attributes,
    position: root?.position,
    line: { ...lineFrom(block.nodes, root?.children[0]), before },
    tags: Object.entries(block.tags).map(([name, value]) => ({ name, value })),
    result: block.result,
    hasPlainComments: true,
  };
}

/** No tree is deeper than its check allows, so that this may call itself once a level. */
function lineFrom(nodes: readonly MoveNode[], first: number | undefined): PlainLine {
  const moves: PlainLine['moves'][number][] = [];
  for (let node = nodes[first ?? -1]; node; node = nodes[node.children[0] ?? -1]) {
    const variations = node.after.flatMap((item): PlainVariation[] => {
      if (item.type === 'comment') return [];
      const before = item.before.flatMap(wordsOf);
      return [{ type: 'variation', line: { ...lineFrom(nodes, item.first), before } }];
    });
    const words = node.after.flatMap((item) => (item.type === 'comment' ? wordsOf(item) : []));
    const text = words.map((each) => each.text).join(' ');
    moves.push({
      san: { text: node.move?.san ?? '' },
      glyphs: node.glyphs.map((nag) => ({ nag })),
      after: [...brace(text), ...variations],
    });
  }
  return { before: [], moves };
}

/** Comments of games files are plain text. */
function wordsOf({
  content,
}: {
  readonly content: readonly { readonly type: string }[];
}): PlainComment[] {
  const text = content.map((node) => ('value' in node ? String(node.value) : '')).join('');
  return brace(text.replace(/\{/g, '(').replace(/\}/g, ')').trim());
}
