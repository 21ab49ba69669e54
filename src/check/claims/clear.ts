import { nameSquares, readBoard } from '../../chess/index.ts';
import { defineClaim, verdict } from './define-claim.ts';
import { verb } from './shared/english.ts';

export const clear = defineClaim({
  name: 'clear',
  usage: ['clear a2-g8'],
  definition: `
No piece or pawn stands on the squares between the two, which lie on one rank, file or diagonal with
at least one square between them. What stands on the two squares themselves does not matter.
`,
  source: 'Common practice, no source',
  examples: [
    { fen: '4k3/5p2/8/8/8/8/B7/4K3 w - - 0 1', claim: 'clear a2-f7', holds: true },
    {
      fen: '6k1/5p2/8/8/8/8/B7/4K3 w - - 0 1',
      claim: 'clear a2-g8',
      holds: false,
      because: 'the pawn on f7 stands between',
    },
    {
      fen: '4k3/8/8/8/8/8/8/R3K2R w KQ - 0 1',
      claim: 'clear a1-h1',
      holds: false,
      because: 'the king on e1 stands between',
      note: 'A line along the edge.',
    },
    { fen: '4k3/8/8/8/8/8/8/4K3 w - - 0 1', claim: 'clear h8-a1', holds: true },
  ],
  parse: (words) => words.line(),
  judge({ position }, line) {
    const board = readBoard(position);
    const standing = line.between.filter((square) => board.has(square));
    return verdict(
      standing.length === 0,
      `nothing stands between ${line.from} and ${line.to}`,
      `${nameSquares(board, standing)} ${verb(standing.length, 'stands', 'stand')} between`,
    );
  },
});
