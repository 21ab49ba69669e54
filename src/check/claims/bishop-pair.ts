import {
  type Board,
  type Color,
  isDark,
  otherColor,
  readBoard,
  sideName,
  squaresOf,
} from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';

export const bishopPair = defineClaim({
  name: 'bishop-pair',
  usage: ['bishop-pair white'],
  definition: `
The side has a bishop on light squares and one on dark squares, and the other side has not both.
So where both sides have two bishops, neither has the pair as an advantage.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: '2b1k1n1/8/8/8/8/8/8/2B1KB2 w - - 0 1',
      claim: 'bishop-pair white',
      holds: true,
      because: 'White has bishops on light and on dark squares, and Black has not',
    },
    {
      fen: '2b1kb2/8/8/8/8/8/8/2B1KB2 w - - 0 1',
      claim: 'bishop-pair white',
      holds: false,
      because: 'Black too has bishops on light and on dark squares',
    },
    {
      fen: '2b1k1n1/8/8/8/8/8/8/B1B1K3 w - - 0 1',
      claim: 'bishop-pair white',
      holds: false,
      because: 'White has no bishop on light squares',
      note: 'Two bishops on squares of one colour are no pair.',
    },
  ],
  parse: (words) => words.color(),
  judge({ position }, color) {
    const board = readBoard(position);
    const own = shades(board, color);
    const [side, other] = [sideName(color), sideName(otherColor(color))];
    if (own.size === 0) return no(`${side} has no bishop`);
    if (own.size === 1)
      return no(`${side} has no bishop on ${own.has('dark') ? 'light' : 'dark'} squares`);
    if (shades(board, otherColor(color)).size === 2) {
      return no(`${other} too has bishops on light and on dark squares`);
    }
    return yes(`${side} has bishops on light and on dark squares, and ${other} has not`);
  },
});

function shades(board: Board, color: Color): Set<'dark' | 'light'> {
  return new Set(
    squaresOf(board, color, 'bishop').map((square) => (isDark(square) ? 'dark' : 'light')),
  );
}
