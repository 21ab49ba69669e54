import type { Code } from 'mdast';
import { nearestName } from '../../diagnostics/index.ts';
import { readMoves } from '../moves/read-moves.ts';
import type { BlockSyntax, TreeSyntax } from '../types.ts';
import { type BlockContext, checkAttributes, pickAttribute, readView } from './block-context.ts';
import { type Fence, readFence } from './fence.ts';
import { readLearn } from './learn.ts';
import { readDiagram } from './read-diagram.ts';
import { readExercise } from './read-exercise.ts';
import { readGame } from './read-game.ts';
import { readPattern } from './read-pattern.ts';

export const blockNames = ['moves', 'diagram', 'exercise', 'game', 'pattern'] as const;

/** The attributes of each block. */
export const attributes: Readonly<Record<(typeof blockNames)[number], readonly string[]>> = {
  moves: ['from', 'fen', 'view', 'learn'],
  diagram: ['at', 'fen', 'after', 'view'],
  exercise: ['at', 'fen', 'after', 'before', 'view'],
  game: ['file', 'number', 'from', 'to', 'view'],
  pattern: ['view'],
};

/** Reads a fenced block of the course language; `undefined` where the block is other code. */
export function readBlock(node: Code, context: BlockContext): BlockSyntax | undefined {
  const name = blockNames.find((known) => known === node.lang);
  if (!name) {
    suggestName(node, context);
    return undefined;
  }
  const fence = closeFence(name, readFence(node, context.source), context);
  const areSound = checkAttributes(name, attributes[name], fence, context);
  const { start, end } = fence.place;
  const shared = {
    key: context.keyOf(context.source.text.slice(start.offset, end.offset)),
    place: fence.place,
    ...readView(fence, context),
  };
  switch (name) {
    case 'moves':
      return {
        kind: 'moves',
        ...shared,
        ...pickAttribute(fence, ['from', 'fen'], context),
        ...(!areSound && { startInDoubt: true as const }),
        ...readLearn(fence, context),
        moves: readMovesOf(fence, context),
      };
    case 'diagram':
      return { kind: 'diagram', ...shared, ...readDiagram(fence, context) };
    case 'exercise':
      return { kind: 'exercise', ...shared, ...readExercise(fence, context) };
    case 'game':
      return { kind: 'game', ...shared, ...readGame(fence, context) };
    case 'pattern':
      return { kind: 'pattern', ...shared, ...readPattern(fence, context) };
  }
}

function readMovesOf(fence: Fence, context: BlockContext): TreeSyntax {
  if (fence.closed && !fence.attributes.has('fen') && fence.content.trim() === '') {
    context.reportMoves({
      place: fence.opening,
      message: 'This `moves` block is empty.',
      hint: 'Write moves in it, such as `1. e4 e5`, or take it out.',
    });
  }
  return readMoves(fence.content, fence.pointAt, context);
}

const opensBlock = new RegExp(
  `^[ \\t>]*(?:\`{3,}|~{3,})[ \\t]*(?:${blockNames.join('|')})\\b`,
  'm',
);
// CR LF is one line end: there is no empty line between the two characters.
const emptyLine = /(?<=\n|\r(?!\n))[ \t]*(?:[\r\n]|$)/;
// The look-behinds match each run once, so a long run takes linear time.
const misplacedFence = /(?:(?<!`)`{3,}|(?<!~)~{3,})[ \t]*$/m;

/**
 * Reports a block that is not closed, or is closed only by the end of the next one. It drops what follows the first
 * empty line, which is hardly meant as moves: one finding instead of one a word.
 */
function closeFence(name: string, fence: Fence, context: BlockContext): Fence {
  const next = fence.content.search(opensBlock);
  if (fence.closed && next < 0) return fence;
  context.report({
    place: fence.opening,
    message:
      next < 0
        ? `This \`${name}\` block is opened here and never closed: all that follows is taken for a part of it.`
        : `This \`${name}\` block is opened here and not closed before the next block, in line ${fence.pointAt(next).line}.`,
    hint: `Put a line ${fence.marks} after its last line.`,
  });
  const ends = [next, ...[emptyLine, misplacedFence].map((sign) => fence.content.search(sign))];
  const end = Math.min(...ends.filter((at) => at >= 0), fence.content.length);
  return { ...fence, content: fence.content.slice(0, end) };
}

function suggestName(node: Code, context: BlockContext): void {
  const lang = /^[\p{L}\p{N}+#_-]*/u.exec(node.lang ?? '')?.[0] ?? '';
  // Short names of other languages are close to ours by chance: `yaml`, `make`.
  const near = nearestName(lang, blockNames, lang.length < 5 ? 1 : 2);
  if (!near) return;
  const { opening } = readFence(node, context.source);
  context.report({
    place: opening,
    message: `There is no block \`${node.lang}\`.`,
    hint:
      lang === near
        ? `Write a space behind \`${near}\`, and attributes as name="value".`
        : `Did you mean \`${near}\`?`,
  });
}
