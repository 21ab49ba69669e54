import { defineClaim } from './define-claim.ts';
import { judgeLegality } from './shared/legality.ts';

export const illegal = defineClaim({
  name: 'illegal',
  usage: ['illegal O-O'],
  definition: `
The side to move may not play the move: the opposite of \`legal\`. A move that could be either of
two pieces', or whose \`x\` is missing, is neither.
`,
  source: 'FIDE Laws of Chess, article 3',
  examples: [
    {
      fen: '4k3/8/8/8/8/8/5r2/R3K2R w KQ - 0 1',
      claim: 'illegal O-O',
      holds: true,
      note: 'The king would cross f1, which the rook on f2 attacks; castling to the other side is legal.',
    },
    {
      fen: '8/6k1/5r2/4B3/8/8/8/4K2R w K - 0 1',
      claim: 'illegal O-O',
      holds: true,
      note: 'The rook on f6 is pinned and covers f1 all the same.',
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'illegal O-O',
      holds: false,
      because: 'White can play O-O',
    },
  ],
  parse: (words) => words.move(),
  judge: ({ position }, written) =>
    judgeLegality(position, written, (legal, because) => ({ holds: !legal, because })),
});
