import { isMate, isStalemate, legalMoves, sideName, sideToMove } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';

export const stalemate = defineClaim({
  name: 'stalemate',
  usage: ['stalemate'],
  definition: 'The side to move is not in check and has no legal move.',
  source: 'FIDE Laws of Chess, 5.2.1',
  examples: [
    {
      fen: '7k/5Q2/6K1/8/8/8/8/8 b - - 0 1',
      claim: 'stalemate',
      holds: true,
      because: 'Black is not in check and has no legal move',
    },
    {
      fen: '7k/6Q1/6K1/8/8/8/8/8 b - - 0 1',
      claim: 'stalemate',
      holds: false,
      because: 'Black is in check: it is mate',
    },
    {
      fen: '7k/5Q2/6K1/8/8/8/p7/8 b - - 0 1',
      claim: 'stalemate',
      holds: false,
      because: 'Black has a legal move, such as a1=Q',
      note: 'The king cannot move, but a pawn can.',
    },
  ],
  parse: () => undefined,
  judge({ position }) {
    const side = sideName(sideToMove(position));
    if (isStalemate(position)) return yes(`${side} is not in check and has no legal move`);
    if (isMate(position)) return no(`${side} is in check: it is mate`, 'mate');
    return no(`${side} has a legal move, such as ${legalMoves(position)[0]}`);
  },
});
