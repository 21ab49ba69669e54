import { defineClaim, verdict } from './define-claim.ts';
import { judgeBishop } from './shared/bishop-and-pawns.ts';

export const goodBishop = defineClaim({
  name: 'good-bishop',
  usage: ['good-bishop d3'],
  definition: `
Fewer pawns of the bishop's side stand on squares of its colour than on the others, and no enemy pawn
stops one of the former on the c-, d-, e- or f-file. A bishop may be neither good nor \`bad-bishop\`.
`,
  source:
    'Wikipedia, “Bishop (chess)”; J. Watson, Secrets of Modern Chess Strategy. The count is ours',
  examples: [
    {
      fen: '6k1/5pp1/3bp2p/1p1p4/1P1P4/2B1P2P/5PP1/6K1 w - - 0 1',
      claim: 'good-bishop d6',
      holds: true,
      note: 'After L. Evans 1967.',
    },
    {
      fen: '2b3k1/3nqr1p/2p1p1p1/1pPpP3/1P1Q1P2/8/1N2B1PP/R5K1 b - - 0 1',
      claim: 'good-bishop e2 and not good-bishop c8',
      holds: true,
    },
    {
      fen: '6k1/5pp1/3bp2p/1p1p4/1P1P4/2B1P2P/5PP1/6K1 w - - 0 1',
      claim: 'good-bishop c3',
      holds: false,
    },
    {
      fen: '4k3/8/8/8/8/8/P5P1/2B1K3 w - - 0 1',
      claim: 'good-bishop c1',
      holds: true,
      because:
        'no pawns of its side stand on squares of its colour and 2 on others, and none of them on the c- to f-file is stopped by an enemy pawn',
    },
    {
      fen: '4k3/8/8/8/8/8/PP6/2B1K3 w - - 0 1',
      claim: 'good-bishop c1',
      holds: false,
      note: 'One pawn on each colour: neither good nor bad.',
    },
  ],
  parse: (words) => words.square('the square of a bishop'),
  judge: ({ position }, square) =>
    judgeBishop(position, square, ({ on, off, rammed, because }) =>
      verdict(on < off && rammed.length === 0, because, because),
    ),
});
