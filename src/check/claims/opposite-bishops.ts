import { isDark, readBoard, squaresOf } from '../../chess/index.ts';
import { defineClaim, no, verdict } from './define-claim.ts';

export const oppositeBishops = defineClaim({
  name: 'opposite-bishops',
  usage: ['opposite-bishops'],
  definition: `
Each side has exactly one bishop, and one of the two stands on a light square, the other on a dark
one. Other pieces may be on the board.
`,
  source: 'Wikipedia, “Opposite-coloured bishops”',
  examples: [
    {
      fen: '2b1k3/8/8/8/8/8/8/2B1K3 w - - 0 1',
      claim: 'opposite-bishops',
      holds: true,
      because: 'the bishop on c1 is dark-squared and the one on c8 light-squared',
    },
    {
      fen: '2b1k3/8/8/8/8/8/8/4KB2 w - - 0 1',
      claim: 'opposite-bishops',
      holds: false,
      because: 'the bishops on f1 and c8 are both light-squared',
    },
    {
      fen: '2b1kb2/8/8/8/8/8/8/2B1K3 w - - 0 1',
      claim: 'opposite-bishops',
      holds: false,
      because: 'Black has 2 bishops',
    },
    {
      fen: 'r1bqk3/8/8/8/8/8/8/R1BQK3 w - - 0 1',
      claim: 'opposite-bishops',
      holds: true,
      note: 'Also with queens and rooks.',
    },
  ],
  parse: () => undefined,
  judge({ position }) {
    const board = readBoard(position);
    const white = squaresOf(board, 'white', 'bishop');
    const black = squaresOf(board, 'black', 'bishop');
    for (const [side, bishops] of [
      ['White', white],
      ['Black', black],
    ] as const) {
      if (bishops.length !== 1) {
        return no(
          `${side} has ${bishops.length === 0 ? 'no bishop' : `${bishops.length} bishops`}`,
        );
      }
    }
    const [first = '', second = ''] = [...white, ...black];
    const shade = (square: string) => (isDark(square) ? 'dark-squared' : 'light-squared');
    return verdict(
      isDark(first) !== isDark(second),
      `the bishop on ${first} is ${shade(first)} and the one on ${second} ${shade(second)}`,
      `the bishops on ${first} and ${second} are both ${shade(first)}`,
    );
  },
});
