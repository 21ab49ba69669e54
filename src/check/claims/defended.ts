import { defineClaim, verdict } from './define-claim.ts';
import { judgeDefenders } from './shared/defenders.ts';

export const defended = defineClaim({
  name: 'defended',
  usage: ['defended e4'],
  definition: `
At least one piece or pawn of its own colour defends the piece on the square: the opposite of
\`loose\`. A pinned defender counts. A king is neither loose nor defended.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: '4k3/8/3p4/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'defended e5',
      holds: true,
      because: 'the pawn on d6 defends it',
    },
    {
      fen: '4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'defended e5',
      holds: false,
      because: 'no black piece or pawn defends it',
    },
    {
      fen: '6k1/8/8/8/8/8/4R3/4RK2 w - - 0 1',
      claim: 'defended e1 and defended e2',
      holds: true,
      note: 'Two rooks defend each other; the king defends too.',
    },
    { fen: '4k3/8/8/8/8/8/8/4K3 w - - 0 1', claim: 'not defended e4', holds: 'empty' },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgeDefenders(position, square, ({ count, some, none }) => verdict(count > 0, some, none)),
});
