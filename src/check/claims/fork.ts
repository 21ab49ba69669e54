import { attackersOn, attacksFrom, nameOf, nameSquares, otherColor } from '../../chess/index.ts';
import { defineClaim, no, yes } from './define-claim.ts';
import { judgePiece } from './shared/judge-piece.ts';
import { isWorthMore } from './shared/worth.ts';

export const fork = defineClaim({
  name: 'fork',
  usage: ['fork f7'],
  definition: `
The piece on the square attacks at least two enemy targets. A target is the king, a piece or pawn
that nothing defends, or a piece worth more than the attacker (1-3-3-5-9). That the attacker itself
can be taken does not undo the fork.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: 'r3k3/2N5/8/8/8/8/8/4K3 b - - 0 1',
      claim: 'fork c7',
      holds: true,
      because: 'it attacks the rook on a8 and the king on e8',
    },
    {
      fen: '2k4r/8/5N2/8/8/8/8/4K3 b - - 0 1',
      claim: 'fork f6',
      holds: false,
      because: 'it attacks no target',
    },
    {
      fen: 'r3k3/2N5/3b4/8/8/8/8/4K3 b - - 0 1',
      claim: 'fork c7',
      holds: true,
      note: 'The bishop on d6 can take the knight: still a fork.',
    },
    {
      fen: '4k3/p7/1pn5/8/2B5/8/8/R3K3 w - - 0 1',
      claim: 'fork a1',
      holds: false,
      because: 'it attacks no target: the pawn on a7 is defended and worth no more than it',
    },
    {
      fen: '4k3/8/2r1r3/3P4/8/8/8/4K3 w - - 0 1',
      claim: 'fork d5',
      holds: true,
      because: 'it attacks the rook on c6 and the rook on e6',
      note: 'Pawns fork too. The rooks defend each other, but each is worth more than the pawn.',
    },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgePiece(position, square, ({ board, piece, color }) => {
      const enemy = otherColor(color);
      const attacked = attacksFrom(board, square).filter((to) => board.get(to)?.color === enemy);
      const targets = attacked.filter((to) => {
        const target = board.get(to);
        if (!target) return false;
        return (
          target.kind === 'king' ||
          isWorthMore(target, piece) ||
          attackersOn(board, to, enemy).length === 0
        );
      });
      targets.sort();
      if (targets.length >= 2) return yes(`it attacks ${nameSquares(board, targets)}`);
      const [only] = targets;
      const others = attacked.filter((to) => to !== only);
      const rest =
        others.length > 0
          ? `: ${nameSquares(board, others.sort())} ${others.length === 1 ? 'is' : 'are'} defended and worth no more than it`
          : '';
      return no(
        `${only ? `its only target is ${nameOf(board, only)}` : 'it attacks no target'}${rest}`,
      );
    }),
});
