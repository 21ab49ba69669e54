import { nameSquares, readBoard, sideName } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { developedPieces } from './developed.ts';

export const development = defineClaim({
  name: 'development',
  usage: ['development white 2'],
  definition: `
Exactly so many knights and bishops of the side are developed: they do not stand on the b-, c-, f- or
g-file of their first rank. Pieces that were exchanged are not counted, nor are queen, rooks and pawns.
`,
  source: 'Wikipedia, “Glossary of chess”, “Develop”; the count is common practice',
  examples: [
    {
      fen: 'rnb1kbnr/ppp1pppp/8/q7/8/2N5/PPPP1PPP/R1BQKBNR w KQkq - 2 4',
      claim: 'development white 1 and development black 0',
      holds: true,
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'development white 2',
      holds: true,
      because: 'the bishop on c4 and the knight on f3 are developed',
    },
    {
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'development white 3',
      holds: false,
      because: 'the bishop on c4 and the knight on f3 are developed',
    },
    {
      fen: '4k3/8/8/8/8/8/8/2N1K3 w - - 0 1',
      claim: 'development white 0',
      holds: true,
      because: 'no knight or bishop of White is developed',
      note: 'A knight on c1 has come back to where bishops begin, and counts as undeveloped.',
    },
  ],
  parse: (words) => ({ color: words.color(), count: words.count(0) }),
  judge({ position }, { color, count }) {
    const pieces = developedPieces(position, color);
    const because =
      pieces.length === 0
        ? `no knight or bishop of ${sideName(color)} is developed`
        : `${nameSquares(readBoard(position), pieces)} ${pieces.length === 1 ? 'is' : 'are'} developed`;
    return pieces.length === count
      ? yes(because)
      : no(because, `development ${color} ${pieces.length}`);
  },
});
