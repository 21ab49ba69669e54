import { defineClaim } from './define-claim.ts';
import { judgeLegality } from './shared/legality.ts';

export const legal = defineClaim({
  name: 'legal',
  usage: ['legal Ng5'],
  definition: `
The side to move may play the move. It is read as in a block of moves: a missing \`+\`, or more of
the starting square than is needed, is no fault. A move that could be either of two pieces', or
that is written as a capture where it takes nothing, or the other way round, is neither \`legal\` nor
\`illegal\`.
`,
  source: 'FIDE Laws of Chess, article 3; PGN standard, 8.2.3, for how a move is written',
  examples: [
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'legal Ng5',
      holds: true,
      because: 'White can play Ng5',
    },
    {
      fen: 'r1bqk1nr/ppp2ppp/2np4/4p3/1b1PP3/2N2N2/PPP2PPP/R1BQKB1R w KQkq - 0 5',
      claim: 'legal Nd5',
      holds: false,
      because: 'the knight on c3 is pinned to the king on e1 by the bishop on b4',
    },
    {
      fen: '1r2k3/8/8/8/8/8/8/R3K3 w Q - 0 1',
      claim: 'legal O-O-O',
      holds: true,
      note: 'The rook on b8 attacks b1, but the king does not cross it.',
    },
    {
      fen: '8/8/8/8/k2Pp2Q/8/8/3K4 b - d3 0 1',
      claim: 'legal exd3',
      holds: false,
      note: 'Taking en passant would clear the rank between queen and king.',
    },
    {
      fen: '4k3/8/8/8/8/8/8/N3KN2 w - - 0 1',
      claim: 'legal Nd2',
      holds: true,
    },
    {
      fen: '4k3/8/8/8/8/1N6/8/4KN2 w - - 0 1',
      claim: 'not legal Nd2',
      holds: 'empty',
      because: 'Nd2 is not one move: the knight on b3 and the knight on f1 can both go to d2',
    },
  ],
  parse: (words) => words.move(),
  judge: ({ position }, written) =>
    judgeLegality(position, written, (holds, because) => ({ holds, because })),
});
