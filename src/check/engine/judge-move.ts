import { type Position, sideName, sideToMove } from '../../chess/index.ts';
import { type EngineFact, type EngineLine, type Score, scoreOfMove } from '../../facts/index.ts';
import type { MoveNode } from '../../model/index.ts';
import type { CourseView } from '../view/index.ts';
import { engineOf, lineText, lossOf, nameOfMove, scoreText } from './engine-words.ts';

/** A move beside the best that an engine has in its place. */
export interface JudgedMove {
  readonly san: string;
  /** `7...Be7`. */
  readonly name: string;
  readonly score: Score;
  /** What it is worse than the best move, in pawns. */
  readonly loss: number;
  readonly best: EngineLine;
  /** The best move, such as `7...Bd6`. */
  readonly better: string;
  /** Its line: `7...Bd6 8.O-O`. */
  readonly line: string;
  /** `for Black, Some Engine 1 at depth 20 counts`. */
  readonly counts: string;
  /** The count in words, the move's first: `for Black, Some Engine 1 at depth 20 counts -1.20 against +0.10`. */
  readonly against: string;
}

/** What an engine says of a move from a position; nothing where it has looked at one of the two alone. */
export function judgeMove(
  course: CourseView,
  position: Position | undefined,
  { move, position: to }: Pick<MoveNode, 'move' | 'position'>,
): JudgedMove | undefined {
  const here = position && course.ask('engine', position.key);
  const best = here?.lines[0];
  if (!position || !best || !move || !to) return undefined;
  const { san } = move;
  const score = scoreOfMove({ san, to }, { here, after: course.ask('engine', to.key) });
  if (score === undefined) return undefined;
  const counts = countsText(position, here);
  return {
    san,
    name: nameOfMove(position, san),
    score,
    loss: lossOf(best.score, score),
    best,
    better: nameOfMove(position, best.moves[0] ?? ''),
    line: lineText(position, best),
    counts,
    against: `${counts} ${scoreText(score)} against ${scoreText(best.score)}`,
  };
}

/** `for Black, Some Engine 1 at depth 20 counts`. */
export function countsText(position: Position, fact: EngineFact): string {
  return `for ${sideName(sideToMove(position))}, ${engineOf(fact)} counts`;
}
