import { attackersOn, nameSquares, readBoard, squaresOf } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';

export const everythingDefended = defineClaim({
  name: 'everything-defended',
  usage: ['everything-defended white', 'everything-defended white pieces'],
  definition: `
No piece or pawn of the side is \`loose\`: each but the king is defended by another. With \`pieces\`,
pawns are left out. A pinned defender counts, and so does the king.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: '6k1/5pp1/6np/8/8/6NP/5PP1/6K1 w - - 0 1',
      claim: 'everything-defended white and everything-defended black',
      holds: true,
    },
    {
      fen: 'rnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq - 0 1',
      claim: 'everything-defended white',
      holds: false,
      because: 'nothing defends the rook on a1 and the rook on h1',
    },
    {
      fen: '6k1/5pp1/6np/8/8/6NP/P4PP1/6K1 w - - 0 1',
      claim: 'everything-defended white pieces and not everything-defended white',
      holds: true,
      note: 'Only the pawn on a2 is loose.',
    },
  ],
  parse(words) {
    const color = words.color();
    return { color, pawns: words.done || words.oneOf(['pieces']) !== 'pieces' };
  },
  judge({ position }, { color, pawns }) {
    const board = readBoard(position);
    const loose = squaresOf(board, color).filter((square) => {
      const kind = board.get(square)?.kind;
      if (kind === 'king' || (kind === 'pawn' && !pawns)) return false;
      return attackersOn(board, square, color).length === 0;
    });
    if (loose.length > 0) return no(`nothing defends ${nameSquares(board, loose.sort())}`);
    return yes(`each ${color} ${pawns ? 'piece and pawn' : 'piece'} is defended`);
  },
});
