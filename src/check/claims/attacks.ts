import { nameOf } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { reaches, whyNotReached } from './shared/reach.ts';

export const attacks = defineClaim({
  name: 'attacks',
  usage: ['attacks c5 d4'],
  definition: `
The piece on the first square attacks the second: it could take an enemy piece there, as far as
its way of moving goes. The second square holds an enemy piece or is empty; what stands there of
the own colour is defended, not attacked. A pinned piece attacks as well. Pawns attack the two
squares diagonally in front of them, on the a- and h-file one. Only the first piece on a line
is attacked, not what stands behind it.
`,
  source: 'FIDE Laws of Chess, 3.1',
  examples: [
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      claim: 'attacks c5 d4',
      holds: true,
      because: 'the pawn on c5 attacks the pawn on d4',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      claim: 'attacks d1 d5',
      holds: false,
      because: 'the pawn on d4 stands between d1 and d5',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      claim: 'attacks d1 d4',
      holds: false,
      because: 'the pawn on d4 is of the same side: the queen on d1 defends it',
    },
    {
      fen: 'rnbqkbnr/pp3ppp/4p3/2pp4/2PP4/2N5/PP2PPPP/R1BQKBNR w KQkq - 0 4',
      claim: 'attacks c3 e3',
      holds: false,
      because: 'the knight on c3 attacks only a2, a4, b1, b5, d1, d5, e2 and e4',
    },
    {
      fen: '4k3/8/8/8/1b6/2N5/8/4K3 w - - 0 1',
      claim: 'attacks c3 d5',
      holds: true,
      note: 'The knight is pinned and attacks nevertheless; d5 is empty.',
    },
    {
      fen: '4k3/8/8/8/8/8/P7/4K3 w - - 0 1',
      claim: 'attacks a2 b3 and not attacks a2 a3',
      holds: true,
      note: 'A pawn attacks diagonally; at the edge one square.',
    },
  ],
  parse: (words) => ({ from: words.square('the square of a piece'), to: words.square() }),
  judge: ({ position }, { from, to }) =>
    judgePiece(position, from, ({ board, color }) => {
      if (!reaches(board, from, to)) return no(whyNotReached(board, from, to));
      const standing = board.get(to);
      if (standing?.color === color) {
        return no(`${nameOf(board, to)} is of the same side: ${nameOf(board, from)} defends it`);
      }
      return yes(`${nameOf(board, from)} attacks ${standing ? nameOf(board, to) : to}`);
    }),
});
