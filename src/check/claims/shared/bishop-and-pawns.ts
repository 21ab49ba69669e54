/** What `bad-bishop` and `good-bishop` share: a bishop and the pawns of its side. */
import {
  fileOf,
  isDark,
  otherColor,
  type Position,
  type Square,
  squaresOf,
} from '../../../chess/index.ts';
import type { Verdict } from '../define-claim.ts';
import { counted } from './english.ts';
import { judgeKind } from './judge-piece.ts';
import { stopSquare } from './pawns.ts';

export interface BishopAndPawns {
  /** Own pawns on squares of its colour, and off it. */
  readonly on: number;
  readonly off: number;
  /** Own pawns on its colour, on the c- to f-file, with an enemy pawn directly in front. */
  readonly rammed: readonly Square[];
  readonly because: string;
}

export function judgeBishop(
  position: Position,
  square: Square,
  judge: (bishop: BishopAndPawns) => Verdict,
): Verdict {
  return judgeKind(position, square, 'bishop', ({ board, color }) => {
    const pawns = squaresOf(board, color, 'pawn');
    const sameColor = pawns.filter((pawn) => isDark(pawn) === isDark(square));
    const rammed = sameColor.filter((pawn) => {
      const ahead = board.get(stopSquare(pawn, color) ?? '');
      const central = fileOf(pawn) >= 3 && fileOf(pawn) <= 6;
      return central && ahead?.kind === 'pawn' && ahead.color === otherColor(color);
    });
    rammed.sort();
    const [on, off] = [sameColor.length, pawns.length - sameColor.length];
    const central =
      rammed.length > 0
        ? `an enemy pawn stops the one on ${rammed.join(' and ')}`
        : 'none of them on the c- to f-file is stopped by an enemy pawn';
    const because = `${counted(on, 'pawn')} of its side ${on === 1 ? 'stands' : 'stand'} on squares of its colour and ${off === 0 ? 'none' : off} on others, and ${central}`;
    return judge({ on, off, rammed, because });
  });
}
