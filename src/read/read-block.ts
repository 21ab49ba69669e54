import type { Code } from 'mdast';
import { nearestName } from '../diagnostics/index.ts';
import { type BlockContext, checkAttributes, pickAttribute, readView } from './block-context.ts';
import { readFence } from './fence.ts';
import { readDiagram } from './read-diagram.ts';
import { readExercise } from './read-exercise.ts';
import { readGame } from './read-game.ts';
import { readMoves } from './read-moves.ts';
import { readPattern } from './read-pattern.ts';
import type { BlockDraft } from './types.ts';

export const blockNames = ['moves', 'diagram', 'exercise', 'game', 'pattern'] as const;

const attributes: Readonly<Record<(typeof blockNames)[number], readonly string[]>> = {
  moves: ['from', 'fen', 'view'],
  diagram: ['at', 'fen', 'after', 'view'],
  exercise: ['at', 'fen', 'after', 'view'],
  game: ['file', 'number', 'from', 'to', 'view'],
  pattern: ['view'],
};

/** Reads a fenced block of the course language; `undefined` where the block is other code. */
export function readBlock(node: Code, context: BlockContext): BlockDraft | undefined {
  const name = blockNames.find((known) => known === node.lang);
  if (!name) {
    suggestName(node, context);
    return undefined;
  }
  const fence = readFence(node, context.source);
  if (!fence.closed) {
    context.report({
      place: fence.opening,
      message: `This \`${name}\` block is opened here and never closed: the rest of the chapter is taken for it.`,
      hint: 'Put a line with three backticks after its last line.',
    });
  }
  checkAttributes(name, attributes[name], fence, context);
  const shared = { place: fence.place, ...readView(fence, context) };
  switch (name) {
    case 'moves':
      return {
        kind: 'moves',
        ...shared,
        ...pickAttribute(fence, ['from', 'fen'], context),
        moves: readMoves(fence.content, fence.pointAt, context),
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

function suggestName(node: Code, context: BlockContext): void {
  const lang = node.lang ?? '';
  // Short names of other languages lie near ours by chance: `yaml`, `make`.
  const near = nearestName(lang, blockNames, lang.length < 5 ? 1 : 2);
  if (!near) return;
  const { opening } = readFence(node, context.source);
  context.report({
    place: opening,
    message: `There is no block \`${lang}\`.`,
    hint: `Did you mean \`${near}\`?`,
  });
}
