import { readMoves } from '../moves/read-moves.ts';
import type { PlacedText, PositionSyntax } from '../types.ts';
import type { BlockContext } from './block-context.ts';
import type { Fence } from './fence.ts';

/** Reads the position of a still board: a name, a FEN, or the moves that lead to it. */
export function readPosition(
  name: string,
  fence: Fence,
  { at, fen, after }: { at?: PlacedText; fen?: PlacedText; after?: PlacedText },
  context: BlockContext,
): PositionSyntax {
  if (at) return { at };
  if (fen) return { fen };
  if (after) {
    const start = after.place.start.offset;
    const pointAt = (offset: number) => context.source.pointAt(start + offset);
    return { after: readMoves(after.text, pointAt, context) };
  }
  // Reported already.
  if (fence.unreadable) return {};
  context.report({
    place: fence.opening,
    message: `This ${name} does not say which position it shows.`,
    hint: 'Write at="label", fen="…" or after="1. d4 d5".',
  });
  return {};
}
