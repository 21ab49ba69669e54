import { nameSquares, readBoard, sideName } from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { developedPieces } from './shared/developed.ts';
import { readCountSince } from './shared/read-count-since.ts';

export const development = defineClaim({
  name: 'development',
  usage: ['development white 2', 'development white 1 since tabiya'],
  definition: `
Exactly so many knights and bishops of the side are developed: they do not stand on the b-, c-, f- or
g-file of their first rank. Pieces that were exchanged are not counted, nor are queen, rooks and pawns.
With \`since\` and the name of a position, so many more are developed here than there.
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
      fen: 'r1bqkb1r/pppp1ppp/2n2n2/4p3/2B1P3/5N2/PPPP1PPP/RNBQK2R w KQkq - 4 4',
      claim: 'development white 1 since before',
      labels: { before: 'rnbqkbnr/pppp1ppp/8/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R b KQkq - 1 2' },
      holds: true,
      because: 'the bishop on c4 and the knight on f3 are developed, and 1 was at `before`',
    },
    {
      fen: '4k3/8/8/8/8/8/8/2N1K3 w - - 0 1',
      claim: 'development white 0',
      holds: true,
      because: 'no knight or bishop of White is developed',
      note: 'A knight on c1 has come back to where bishops begin, and counts as undeveloped.',
    },
  ],
  parse: readCountSince,
  judge({ position, labelled }, { color, count, since }) {
    const pieces = developedPieces(position, color);
    const because =
      pieces.length === 0
        ? `no knight or bishop of ${sideName(color)} is developed`
        : `${nameSquares(readBoard(position), pieces)} ${pieces.length === 1 ? 'is' : 'are'} developed`;
    if (since === undefined) {
      return pieces.length === count
        ? yes(because)
        : no(because, `development ${color} ${pieces.length}`);
    }
    const before = labelled(since);
    if (!before) return empty(`the moves to \`${since}\` cannot be played`);
    const then = developedPieces(before, color).length;
    const more = pieces.length - then;
    const change = `${because}, and ${then} ${then === 1 ? 'was' : 'were'} at \`${since}\``;
    if (more === count) return yes(change);
    return no(change, more < 0 ? undefined : `development ${color} ${more} since ${since}`);
  },
});
