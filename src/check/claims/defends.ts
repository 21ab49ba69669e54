import { nameOf } from '../../chess/index.ts';
import { defineClaim, yes } from './define-claim.ts';
import { judgeDefender } from './shared/judge-defender.ts';

export const defends = defineClaim({
  name: 'defends',
  usage: ['defends f3 e5'],
  definition: `
The piece on the first square could take back on the second, as far as its way of moving goes. The
second square holds a piece of its own colour or is empty. A pinned piece is counted too; whether
a defence holds when it comes to captures is told by \`en-prise\`.
`,
  source: 'FIDE Laws of Chess, 3.1, applied to squares held by the own side',
  examples: [
    {
      fen: 'rnbqkb1r/pp3ppp/4pn2/2pp4/2PP4/2N2N2/PP2PPPP/R1BQKB1R w KQkq - 0 5',
      claim: 'defends f6 d5',
      holds: true,
      because: 'the knight on f6 defends the pawn on d5',
    },
    {
      fen: 'rnbqkb1r/pp3ppp/4pn2/2pp4/2PP4/2N2N2/PP2PPPP/R1BQKB1R w KQkq - 0 5',
      claim: 'defends f3 e5',
      holds: true,
      note: 'An empty square can be defended.',
    },
    {
      fen: 'rnbqkb1r/pp3ppp/4pn2/2pp4/2PP4/2N2N2/PP2PPPP/R1BQKB1R w KQkq - 0 5',
      claim: 'defends c3 d5',
      holds: false,
      because: 'the pawn on d5 is of the other side: the knight on c3 attacks it',
    },
    {
      fen: 'rnbqkb1r/pp3ppp/4pn2/2pp4/2PP4/2N2N2/PP2PPPP/R1BQKB1R w KQkq - 0 5',
      claim: 'defends c8 e6',
      holds: true,
    },
    {
      fen: 'rnbqkb1r/pp3ppp/4pn2/2pp4/2PP4/2N2N2/PP2PPPP/R1BQKB1R w KQkq - 0 5',
      claim: 'defends f8 c5',
      holds: true,
    },
    {
      fen: '3r2k1/8/8/8/3b4/8/3N4/3R2K1 w - - 0 1',
      claim: 'defends d1 d4',
      holds: false,
      because: 'the knight on d2 stands between d1 and d4',
    },
  ],
  parse: (words) => ({ from: words.square('the square of a piece'), to: words.square() }),
  judge: ({ position }, { from, to }) =>
    judgeDefender(position, { from, to }, ({ board, standing }) =>
      yes(`${nameOf(board, from)} defends ${standing ? nameOf(board, to) : to}`),
    ),
});
