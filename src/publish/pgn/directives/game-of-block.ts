import { initialPosition } from '../../../chess/index.ts';
import type { Block, GameBlock, MovesBlock } from '../../../model/index.ts';
import { packText, parseMovetext, partCommand } from '../../../movetext/index.ts';
import type { BlockGame, WrittenBlock } from './block-game.ts';
import { exerciseLine } from './exercise-line.ts';
import { gameOfFile } from './game-of-file.ts';
import { brace, packedLine } from './packed-line.ts';

/** A block as a game, or undefined where it has to stay text. @param source with its fences. */
export function gameOfBlock(block: Block, source: string): BlockGame | undefined {
  const fence = /^(`{3,}|~{3,})[ \t]*\w+[ \t]*([^\n]*)\n(?:([\s\S]*)\n)?\1[`~]*[ \t]*$/.exec(
    source.replace(/\r\n?/g, '\n'),
  );
  if (fence === null) return undefined;
  const written = { attributes: (fence[2] ?? '').trim(), content: fence[3] ?? '' };
  switch (block.kind) {
    case 'moves':
      return gameOfMoves(block, written);
    case 'game':
      return block.file === block.chapter
        ? gameOfMoves(block, written)
        : gameOfFile(block, written);
    case 'exercise':
      return exerciseLine(block, written);
    case 'diagram':
      return {
        kind: 'diagram',
        attributes: written.attributes,
        position: block.position,
        line: { before: brace(`${partCommand('body')} ${packText(written.content)}`), moves: [] },
      };
    // It has no position of its own, since it has no kings.
    case 'pattern':
      return undefined;
  }
}

function gameOfMoves(block: MovesBlock | GameBlock, { attributes, content }: WrittenBlock) {
  const movetext = parseMovetext(content);
  if (movetext.problems.length > 0 || movetext.untold) return undefined;
  const position = block.nodes[0]?.position ?? initialPosition;
  const line = packedLine(movetext.line, position);
  if (line === undefined) return undefined;
  return {
    kind: block.kind,
    attributes,
    position,
    line,
    tags: movetext.tags.map(({ name, value }) => ({ name, value })),
    result: movetext.line.result?.text,
  };
}
