import type { Score } from './types.ts';

/** The score as it is written in files: `+0.31`, `0.00`, `#3`, `#-2`. */
export function writeScore(score: Score): string {
  if (score.kind === 'mate') return `#${score.moves}`;
  const pawns = (score.hundredths / 100).toFixed(2);
  return score.hundredths > 0 ? `+${pawns}` : pawns;
}

/** The inverse of `writeScore`. */
export function parseScore(text: string): Score | undefined {
  const mate = /^#(-?\d{1,3})$/.exec(text)?.[1];
  if (mate !== undefined) return { kind: 'mate', moves: Number(mate) };
  const pawns = /^([+-]?)(\d{1,3})\.(\d\d)$/.exec(text);
  if (pawns === null) return undefined;
  const [, sign, whole, rest] = pawns;
  // No -0, which prints like 0 and is equal to nothing else.
  const hundredths = Number(whole) * 100 + Number(rest);
  return { kind: 'pawns', hundredths: sign === '-' && hundredths !== 0 ? -hundredths : hundredths };
}

/** The same for the other side, before the move that led to the position. */
export function beforeMove(score: Score): Score {
  if (score.kind === 'pawns')
    return { kind: 'pawns', hundredths: score.hundredths === 0 ? 0 : -score.hundredths };
  // Who mates has played one move more.
  return { kind: 'mate', moves: score.moves > 0 ? -score.moves : 1 - score.moves };
}

/** From here on a side wins: what it is ahead beyond this makes no difference to advice. */
const won = 5;

/** The score in pawns for comparing: at most 5 for whoever is ahead, and so for mate. */
export function inPawns(score: Score): number {
  if (score.kind === 'mate') return score.moves > 0 ? won : -won;
  return Math.max(-won, Math.min(won, score.hundredths / 100));
}
