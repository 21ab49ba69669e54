import { attacksFrom, listed, nameSquares } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { judgeKind } from './shared/judge-piece.ts';

export const shutIn = defineClaim({
  name: 'shut-in',
  usage: ['shut-in c8'],
  definition: `
The bishop on the square has no square to go to: on each of its diagonals the first square holds a
piece or pawn of its own colour. An enemy piece there could be taken, so it does not shut the bishop
in; and whether the squares it could go to are safe does not matter.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: 'rnbqkb1r/pp1p1ppp/4pn2/2p5/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      claim: 'shut-in c8',
      holds: true,
      because: 'the pawn on b7 and the pawn on d7 stand in its way',
    },
    {
      fen: 'rnbqkbnr/ppp1pppp/8/3p4/2PP4/8/PP2PPPP/RNBQKBNR b KQkq - 0 2',
      claim: 'shut-in c8',
      holds: false,
      because: 'it can go to d7, e6, f5, g4 and h3',
    },
    {
      fen: '4k3/8/8/8/8/8/1P6/B3K3 w - - 0 1',
      claim: 'shut-in a1',
      holds: true,
      note: 'In the corner there is one diagonal only.',
    },
    {
      fen: '4k3/8/8/8/8/8/1p1P4/2B1K3 w - - 0 1',
      claim: 'shut-in c1',
      holds: false,
      because: 'it can go to b2',
      note: 'It can take on b2.',
    },
    {
      fen: '4k3/8/8/8/8/8/1P1P4/2N1K3 w - - 0 1',
      claim: 'shut-in c1',
      holds: 'empty',
      because: 'a knight stands on c1, and no bishop',
    },
  ],
  parse: (words) => words.square('the square of a bishop'),
  judge: ({ position }, square) =>
    judgeKind(position, square, 'bishop', ({ board, color }) => {
      const reached = attacksFrom(board, square);
      const free = reached.filter((to) => board.get(to)?.color !== color);
      return verdict(
        free.length === 0,
        `${nameSquares(board, reached.sort())} ${reached.length === 1 ? 'stands' : 'stand'} in its way`,
        `it can go to ${listed(free.sort())}`,
      );
    }),
});
