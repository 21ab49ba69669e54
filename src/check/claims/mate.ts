import { inCheck, isMate, legalMoves, sideName, sideToMove } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';

export const mate = defineClaim({
  name: 'mate',
  usage: ['mate'],
  definition: 'The side to move is in check and has no legal move.',
  source: 'FIDE Laws of Chess, 1.2 and 5.1.1',
  examples: [
    {
      fen: 'r1bqkb1r/pppp1Qpp/2n2n2/4p3/2B1P3/8/PPPP1PPP/RNB1K1NR b KQkq - 0 4',
      claim: 'mate',
      holds: true,
      because: 'Black is in check and has no legal move',
    },
    {
      fen: '7k/5Q2/6K1/8/8/8/8/8 b - - 0 1',
      claim: 'mate',
      holds: false,
      because: 'Black has no legal move, but is not in check: it is stalemate',
    },
    {
      fen: '4r1k1/5ppp/8/8/8/8/5PP1/4K3 w - - 0 1',
      claim: 'mate',
      holds: false,
      because: 'White has a legal move, such as Kf1',
    },
  ],
  parse: () => undefined,
  judge({ position }) {
    const side = sideName(sideToMove(position));
    if (isMate(position)) return yes(`${side} is in check and has no legal move`);
    const [move] = legalMoves(position);
    if (move === undefined) {
      return no(`${side} has no legal move, but is not in check: it is stalemate`, 'stalemate');
    }
    if (!inCheck(position)) return no(`${side} is not in check`);
    return no(`${side} has a legal move, such as ${move}`);
  },
});
