import { attackersOn, nameSquares } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { verb } from './shared/english.ts';
import { judgeDefender } from './shared/judge-defender.ts';

const backRank = 'r1r3k1/p4ppp/1pb5/q7/2Q5/1P1R4/P1B2PPP/3R2K1 w - - 0 1';

export const onlyDefender = defineClaim({
  name: 'only-defender',
  usage: ['only-defender c8 c6'],
  definition: `
The piece on the first square \`defends\` the second, and no other piece, pawn or king of its side
does. Defenders behind another piece on the same line do not count, pinned ones do.
`,
  source: 'FIDE Laws of Chess, 3.1, applied to squares held by the own side',
  examples: [
    {
      fen: backRank,
      claim: 'only-defender c8 c6',
      holds: true,
      because: 'no other black piece or pawn defends c6',
    },
    {
      fen: '4k3/8/3n4/1b3b2/8/8/8/1R3RK1 w - - 0 1',
      claim: 'only-defender d6 b5 and only-defender d6 f5',
      holds: true,
    },
    {
      fen: '4k3/8/3n4/1b3b2/8/8/8/1R3RK1 w - - 0 1',
      claim: 'only-defender d6 e4',
      holds: false,
      because: 'the bishop on f5 defends e4 too',
    },
    {
      fen: '4k3/8/3n4/1b3b2/8/8/8/1R3RK1 w - - 0 1',
      claim: 'only-defender d6 d4',
      holds: false,
      because: 'the knight on d6 attacks only b5, b7, c4, c8, e4, e8, f5 and f7',
    },
    {
      fen: '3rr1k1/8/8/8/8/8/8/3R2K1 b - - 0 1',
      claim: 'only-defender e8 d8',
      holds: true,
      note: 'The king on g8 is too far away; on f8 it would be no help to d8 either.',
    },
    {
      fen: '4k3/8/8/3n4/8/8/3r4/3q2K1 w - - 0 1',
      claim: 'only-defender d2 d5',
      holds: true,
      note: 'The queen behind the rook stands in reserve and does not count.',
    },
  ],
  parse: (words) => ({ from: words.square('the square of a piece'), to: words.square() }),
  judge: ({ position }, { from, to }) =>
    judgeDefender(position, { from, to }, ({ board, color }) => {
      const others = attackersOn(board, to, color).filter((other) => other !== from);
      if (others.length > 0) {
        return no(
          `${nameSquares(board, others.sort())} ${verb(others.length, 'defends', 'defend')} ${to} too`,
        );
      }
      return yes(`no other ${color} piece or pawn defends ${to}`);
    }),
});
