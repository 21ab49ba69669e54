import { nameOf, otherColor } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { judgeKind } from './shared/judge-piece.ts';
import { stopSquare } from './shared/pawns.ts';

export const blockaded = defineClaim({
  name: 'blockaded',
  usage: ['blockaded d4'],
  definition: `
An enemy piece, the king included, stands directly in front of the pawn. An enemy pawn there is a
ram and no blockade.
`,
  source:
    'Chess Programming Wiki, “Blockade of Pawns”; glossaria.net, “Blockade”. Some speak of it with passed or isolated pawns only',
  examples: [
    {
      fen: 'r1bq1rk1/pp3ppp/5n2/3n4/3P4/2N2N2/PP3PPP/R1BQ1RK1 w - - 0 1',
      claim: 'blockaded d4',
      holds: true,
      because: 'the knight on d5 stands in front of it',
    },
    {
      fen: 'r1bq1rk1/pp3ppp/2n2n2/3p4/3P4/2N2N2/PP3PPP/R1BQ1RK1 w - - 0 1',
      claim: 'blockaded d4',
      holds: false,
      because: 'a pawn stands on d5, and only a piece blockades',
    },
    {
      fen: '8/8/3k4/3P4/3K4/8/8/8 w - - 0 1',
      claim: 'blockaded d5',
      holds: true,
      note: 'The king is a blockader too.',
    },
    {
      fen: '4k3/8/8/8/3N4/3P4/8/4K3 w - - 0 1',
      claim: 'blockaded d3',
      holds: false,
      because: 'the knight on d4 is of its own side',
    },
    {
      fen: '4k3/8/8/8/8/3P4/8/4K3 w - - 0 1',
      claim: 'blockaded d3',
      holds: false,
      because: 'd4 is empty',
    },
  ],
  parse: (words) => words.square('the square of a pawn'),
  judge: ({ position }, square) =>
    judgeKind(position, square, 'pawn', ({ board, color }) => {
      const stop = stopSquare(square, color) ?? '';
      const there = board.get(stop);
      if (!there) return no(`${stop} is empty`);
      const name = nameOf(board, stop);
      if (there.color !== otherColor(color)) return no(`${name} is of its own side`);
      if (there.kind === 'pawn') return no(`a pawn stands on ${stop}, and only a piece blockades`);
      return yes(`${name} stands in front of it`);
    }),
});
