import { isMoveFault, type Position, playMove, sideName, sideToMove } from '../../chess/index.ts';
import { empty, type Verdict } from './define-claim.ts';

/** Judges whether a move can be played; empty where the text names more than one. */
export function judgeLegality(
  position: Position,
  written: string,
  judge: (legal: boolean, reason: string) => Verdict,
): Verdict {
  const played = playMove(position, written);
  if (!isMoveFault(played)) {
    return judge(true, `${sideName(sideToMove(position))} can play ${played.san}`);
  }
  if (played.kind === 'ambiguous') {
    return empty(`${written} is not one move: ${played.reason}`);
  }
  return judge(false, played.reason);
}
