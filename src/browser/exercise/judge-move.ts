import type { Spot } from '../spots.ts';
import type { Line } from './read-exercise.ts';

/** What a legal move is in an exercise: what its lines say of it, or no more than legal. */
export type Judgement =
  | { readonly kind: 'legal' }
  | {
      readonly kind: Line['kind'];
      /** Those that begin with the move. */
      readonly lines: readonly Line[];
      /** The position after it. */
      readonly reached: Spot;
    };

/** @param san of the move, as the page prints it. */
export function judgeMove(san: string, lines: readonly Line[]): Judgement {
  const named = lines.filter(({ start }) => start.children[0]?.move?.san === san);
  const [line] = named;
  const reached = line?.start.children[0];
  return line === undefined || reached === undefined
    ? { kind: 'legal' }
    : { kind: line.kind, lines: named, reached };
}
