import { englishLetters, type PieceLetters } from '../../chess/letters.ts';
import { pieceKinds } from '../../chess/types.ts';
import type { Spot } from '../spots.ts';

const initial = 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq -';

/**
 * The moves that lead to a position within its block, as PGN: the seven tags (PGN standard, 8.1.1), and where
 * the block starts, if that is not the initial position (9.7).
 * @param letters those that the page writes moves with; PGN has the English ones.
 */
export function gameTo(spot: Spot, fenOf: (spot: Spot) => string, letters: PieceLetters): string {
  const line: Spot[] = [];
  for (let at: Spot | undefined = spot; at !== undefined; at = at.parent) line.unshift(at);
  const [start = spot, ...moves] = line;
  const fen = fenOf(start);
  const tags = [
    ['Event', '?'],
    ['Site', '?'],
    ['Date', '????.??.??'],
    ['Round', '?'],
    ['White', '?'],
    ['Black', '?'],
    ['Result', '*'],
    ...(fen.startsWith(initial)
      ? []
      : [
          ['SetUp', '1'],
          ['FEN', fen],
        ]),
  ].map(([name, value]) => `[${name} "${value}"]\n`);
  const text = moves.map(({ move }, index) => {
    if (move === undefined) return '';
    const number =
      move.color === 'white' ? `${move.number}. ` : index === 0 ? `${move.number}... ` : '';
    return number + inEnglish(move.san, letters);
  });
  return `${tags.join('')}\n${[...text, '*'].join(' ')}\n`;
}

function inEnglish(san: string, letters: PieceLetters): string {
  if (san.startsWith('O-O')) return san;
  return san.replaceAll(/\p{Lu}/gu, (letter) => {
    const kind = pieceKinds.find((each) => letters[each] === letter);
    return kind === undefined ? letter : englishLetters[kind];
  });
}
