import {
  type Color,
  colors,
  otherColor,
  type Position,
  readBoard,
  relativeRank,
  type Square,
  sideName,
} from '../../../chess/index.ts';
import { empty, no, type Verdict, yes } from '../define-claim.ts';
import { pawnsOn, rankNamed, verb } from './english.ts';
import { pawnAttackers } from './pawns.ts';

/** A claim about a square for a piece, on a side's fourth to seventh rank, that a pawn of that side defends. */
export interface SupportedSquare {
  /** What it is called: `an outpost`. */
  readonly name: string;
  /** What a square is not where a pawn stands on it: `an outpost is a square for a piece`. */
  readonly isForPiece: string;
  /** What the enemy's pawns say of it; `defended` names the pawns that defend it. */
  readonly judge: (square: Square, color: Color, position: Position, defended: string) => Verdict;
}

/** Judges it for a side; else for that of the piece on it; else for either. */
export function judgeSupportedSquare(
  kind: SupportedSquare,
  position: Position,
  { square, color }: { readonly square: Square; readonly color: Color | undefined },
): Verdict {
  const piece = readBoard(position).get(square);
  if (piece?.kind === 'pawn') return empty(`a pawn stands on ${square}, and ${kind.isForPiece}`);
  const owner = color ?? piece?.color;
  if (owner) return judgeFor(kind, position, square, owner);
  const verdicts = colors.map((side) => ({ side, ...judgeFor(kind, position, square, side) }));
  const found = verdicts.find(({ holds }) => holds);
  if (found) return yes(found.because);
  return no(verdicts.map(({ side, because }) => `for ${sideName(side)}, ${because}`).join('; '));
}

function judgeFor(
  { name, judge }: SupportedSquare,
  position: Position,
  square: Square,
  color: Color,
): Verdict {
  const rank = relativeRank(square, color);
  if (rank < 4 || rank > 7) {
    return no(
      `${square} lies on ${sideName(color)}'s ${rankNamed(rank)} rank, and ${name} on the fourth to seventh`,
    );
  }
  const defenders = pawnAttackers(readBoard(position), square, color);
  if (defenders.length === 0) return no(`no ${color} pawn defends it`);
  const defended = `${pawnsOn(defenders, color)} ${verb(defenders.length, 'defends', 'defend')} it`;
  return judge(square, color, position, defended);
}

/** The pawns of the other side that attack a square now. */
export function enemyPawnsAt(position: Position, square: Square, color: Color): Square[] {
  return pawnAttackers(readBoard(position), square, otherColor(color));
}
