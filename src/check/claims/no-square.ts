import { defineClaim, no, yes } from './define-claim.ts';
import { judgeMoves, named } from './shared/moves-of-piece.ts';

export const noSquare = defineClaim({
  name: 'no-square',
  usage: ['no-square a5'],
  definition: `
The knight, bishop, rook or queen has legal moves, as if it were its side's move, and each of them
loses material by static exchange on the square it goes to. Whether it is attacked where it stands is
not asked; where it is, and would be lost, it is \`trapped\`. A piece without any move, such as one that
its own pawns shut in, is not meant.
`,
  source: 'Wikipedia, “Domination (chess)”: all squares that it may go to are controlled',
  examples: [
    {
      fen: '4k3/8/8/n2B4/8/8/8/4K3 b - - 0 1',
      claim: 'no-square a5',
      holds: true,
      because: 'each of its moves Nc6, Nb7, Nc4 or Nb3 loses material',
    },
    {
      fen: '4k3/8/8/n3B3/8/8/8/4K3 b - - 0 1',
      claim: 'no-square a5',
      holds: false,
    },
    {
      fen: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1',
      claim: 'no-square a1',
      holds: false,
      because: 'it has no legal move at all',
    },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgeMoves(position, square, (moves) => {
      if (moves.length === 0) return no('it has no legal move at all');
      const safe = moves.filter(({ gain }) => gain >= 0);
      if (safe.length > 0) return no(`${named(safe)} would lose nothing`);
      return yes(
        `${moves.length === 1 ? 'its only move' : 'each of its moves'} ${named(moves)} loses material`,
      );
    }),
});
