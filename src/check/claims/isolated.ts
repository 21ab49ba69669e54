import { defineClaim, verdict } from './define-claim.ts';
import { filesNamed, pawnsOn, verb } from './shared/english.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { filesBeside, pawnsOnFiles } from './shared/pawns.ts';

export const isolated = defineClaim({
  name: 'isolated',
  usage: ['isolated d5'],
  definition: `
The pawn on the square has no pawn of its own colour on a file beside it. A pawn on the a-file has
only the b-file beside it, one on the h-file only the g-file. Its own file does not count: of
doubled pawns without neighbours both are isolated.
`,
  source: 'Wikipedia, “Isolated pawn”',
  examples: [
    {
      fen: 'rnbq1rk1/pp3ppp/4pn2/8/1b1P4/2N2N2/PP3PPP/R1BQKB1R w KQ - 0 1',
      claim: 'isolated d4',
      holds: true,
      because: 'no white pawn stands on the c- or e-file',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/3p4/3P4/4P3/PP3PPP/RNBQKBNR w KQkq - 0 1',
      claim: 'isolated d4',
      holds: false,
      because: 'the white pawn on e3 stands beside its file',
    },
    {
      fen: '4k3/pp3ppp/8/3P4/3P4/8/PP3PPP/4K3 w - - 0 1',
      claim: 'isolated d4 and isolated d5',
      holds: true,
      note: 'Doubled pawns without neighbours: each counts as isolated.',
    },
    {
      fen: 'r1bq1rk1/pp3ppp/2n2n2/3p4/3P4/2N2N2/PP3PPP/R1BQ1RK1 w - - 0 1',
      claim: 'isolated d5 and isolated d4',
      holds: true,
      note: 'Two isolated pawns face each other: an open file in front is not asked for.',
    },
    {
      fen: '4k3/p1p5/8/8/8/8/5PP1/4K3 w - - 0 1',
      claim: 'isolated a7',
      holds: true,
      because: 'no black pawn stands on the b-file',
      note: 'At the edge only one file lies beside.',
    },
    {
      fen: '4k3/p1p5/8/8/8/8/5PP1/4K3 w - - 0 1',
      claim: 'not isolated d4',
      holds: 'empty',
      because: 'd4 is empty',
      note: 'No pawn stands there, so neither the claim nor its denial is true.',
    },
  ],
  parse: (words) => ({ square: words.square('the square of a pawn') }),
  judge: ({ position }, { square }) =>
    judgeKind(position, square, 'pawn', ({ board, color }) => {
      const files = filesBeside(square);
      const friends = pawnsOnFiles(board, color, files);
      return verdict(
        friends.length === 0,
        `no ${color} pawn stands on ${filesNamed(files)}`,
        `${pawnsOn(friends, color)} ${verb(friends.length, 'stands', 'stand')} beside its file`,
      );
    }),
});
