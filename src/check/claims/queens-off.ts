import { nameSquares, readBoard, squaresOf } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';

export const queensOff = defineClaim({
  name: 'queens-off',
  usage: ['queens-off'],
  definition: `
No queen of either side is on the board.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: 'r1b1kbnr/1pp2ppp/p1p5/8/3NP3/8/PPP2PPP/RNB1K2R b KQkq - 0 7',
      claim: 'queens-off',
      holds: true,
      because: 'no queen is left',
    },
    {
      fen: '3qk3/8/8/8/8/8/8/4K3 w - - 0 1',
      claim: 'queens-off',
      holds: false,
      because: 'the queen on d8 is still there',
      note: 'One queen is one too many.',
    },
  ],
  parse: () => undefined,
  judge({ position }) {
    const board = readBoard(position);
    const left = [...squaresOf(board, 'white', 'queen'), ...squaresOf(board, 'black', 'queen')];
    if (left.length === 0) return yes('no queen is left');
    return no(`${nameSquares(board, left)} ${left.length === 1 ? 'is' : 'are'} still there`);
  },
});
