import { defineClaim, verdict } from './define-claim.ts';
import { judgeBishop } from './shared/bishop-and-pawns.ts';

export const badBishop = defineClaim({
  name: 'bad-bishop',
  usage: ['bad-bishop c8'],
  definition: `
More pawns of the bishop's side stand on squares of its colour than on the others, and an enemy pawn
directly in front stops at least one of the former on the c-, d-, e- or f-file. Whether the bishop
stands outside its pawns is not asked; where it does, say so in the text. A bishop may be neither bad
nor \`good-bishop\`.
`,
  source:
    'Wikipedia, “Bishop (chess)”: impeded by its own pawns; J. Watson, Secrets of Modern Chess Strategy: on the colour of its pawns, of which the central ones decide. The count is ours',
  examples: [
    {
      fen: '2b3k1/3nqr1p/2p1p1p1/1pPpP3/1P1Q1P2/8/1N2B1PP/R5K1 b - - 0 1',
      claim: 'bad-bishop c8',
      holds: true,
      because:
        '6 pawns of its side stand on squares of its colour and none on others, and an enemy pawn stops the one on c6 and e6',
      note: 'Krasenkow–Zvjaginsev 2004.',
    },
    {
      fen: '6k1/5pp1/3bp2p/1p1p4/1P1P4/2B1P2P/5PP1/6K1 w - - 0 1',
      claim: 'bad-bishop c3',
      holds: true,
      because:
        '4 pawns of its side stand on squares of its colour and 2 on others, and an enemy pawn stops the one on d4',
    },
    {
      fen: '6k1/5pp1/3bp2p/1p1p4/1P1P4/2B1P2P/5PP1/6K1 w - - 0 1',
      claim: 'bad-bishop d6',
      holds: false,
    },
    {
      fen: 'rn1qkb1r/pp3ppp/2p1pn2/3p1b2/2PP4/2N1PN2/PP3PPP/R1BQKB1R w KQkq - 0 6',
      claim: 'bad-bishop f5',
      holds: true,
      note: 'Six against two, with d5 stopped: bad by the count, though it stands outside its pawns, where it hinders nothing.',
    },
  ],
  parse: (words) => words.square('the square of a bishop'),
  judge: ({ position }, square) =>
    judgeBishop(position, square, ({ on, off, rammed, because }) =>
      verdict(on > off && rammed.length > 0, because, because),
    ),
});
