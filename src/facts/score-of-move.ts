import { isMate, isStalemate, type Position } from '../chess/index.ts';
import { beforeMove } from './score.ts';
import type { EngineFact, Score } from './types.ts';

/**
 * What a move is worth to the side that plays it: what the engine gave it beside the others, else what it said of
 * the position after it; nothing where it looked at neither.
 * @param here of the position before the move.
 * @param after of the position after it.
 */
export function scoreOfMove(
  { san, to }: { readonly san: string; readonly to: Position },
  { here, after }: { readonly here: EngineFact; readonly after: EngineFact | undefined },
): Score | undefined {
  const line = here.lines.find(({ moves }) => moves[0] === san);
  if (line) return line.score;
  if (after?.lines[0]) return beforeMove(after.lines[0].score);
  if (isMate(to)) return { kind: 'mate', moves: 1 };
  return isStalemate(to) ? { kind: 'pawns', hundredths: 0 } : undefined;
}
