import {
  bestCapture,
  nameOf,
  otherColor,
  passMove,
  sideName,
  sideToMove,
} from '../../chess/index.ts';
import { defineClaim, empty, no, yes } from './define-claim.ts';
import { pawnsWorth } from './shared/english.ts';
import { judgePiece } from './shared/judge-piece.ts';

export const enPrise = defineClaim({
  name: 'en-prise',
  usage: ['en-prise e5'],
  definition: `
The other side, if it is its move or were its move, has a legal capture of the piece on the square
that wins material by static exchange: the sides then take in turn on that square, each with its
least valuable piece that legally can, and each may stop. So a piece whose only defender is pinned
is en prise. Moves elsewhere on the board are not looked at.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: '4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'en-prise e5',
      holds: true,
      because: "the rook on e2 takes it, and White wins 3 pawns' worth by the captures on e5",
    },
    {
      fen: '4k3/8/3p4/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'en-prise e5',
      holds: false,
      because:
        "the rook on e2 can take it, but White would lose 2 pawns' worth by the captures on e5",
    },
    {
      fen: '2k5/2b5/8/4n3/8/8/2R1R3/4K3 w - - 0 1',
      claim: 'en-prise e5',
      holds: true,
      note: 'The only defender, on c7, is pinned to its king and may not take back.',
    },
    {
      fen: '4k3/8/8/4n3/8/8/4R3/4K3 b - - 0 1',
      claim: 'en-prise e5',
      holds: true,
      note: "It is Black's move, and the knight may run; still it stands en prise.",
    },
    {
      fen: '4k3/8/8/8/3pP3/8/8/4K3 b - e3 0 1',
      claim: 'en-prise e4',
      holds: true,
      note: 'The pawn can be taken en passant.',
    },
    {
      fen: '4k3/8/8/4n3/8/8/8/4K3 w - - 0 1',
      claim: 'en-prise e5',
      holds: false,
      because: 'White has no legal capture of it',
    },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgePiece(position, square, ({ board, piece, color }) => {
      if (piece.kind === 'king') return empty('a king cannot be taken');
      const taker = otherColor(color);
      const turn = sideToMove(position) === taker ? position : passMove(position);
      const capture = bestCapture(turn, square);
      const side = sideName(taker);
      if (!capture) return no(`${side} has no legal capture of it`);
      const name = nameOf(board, capture.from);
      const worth = pawnsWorth(Math.abs(capture.gain));
      if (capture.gain > 0) {
        return yes(`${name} takes it, and ${side} wins ${worth} by the captures on ${capture.to}`);
      }
      return no(
        capture.gain === 0
          ? `${name} can take it, but the captures on ${capture.to} win nothing`
          : `${name} can take it, but ${side} would lose ${worth} by the captures on ${capture.to}`,
      );
    }),
});
