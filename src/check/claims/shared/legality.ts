import {
  isMoveFault,
  type Position,
  playMove,
  sideName,
  sideToMove,
} from '../../../chess/index.ts';
import { empty, type Verdict } from '../define-claim.ts';

/** Judges whether a move can be played; empty where the text names more than one,
 * or writes a capture as none. */
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
  return isMisspelt(position, written) ? empty(played.reason) : judge(false, played.reason);
}

/** Whether a piece's move is legal but for an `x` that it has too many or too few. */
export function isMisspelt(position: Position, written: string): boolean {
  if (!/^[KQRBN]/.test(written)) return false;
  const other = written.includes('x')
    ? written.replace('x', '')
    : written.replace(/[a-h][1-8][+#]?$/, 'x$&');
  const played = playMove(position, other);
  return !isMoveFault(played) || played.kind === 'ambiguous';
}
