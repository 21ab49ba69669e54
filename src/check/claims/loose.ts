import { defineClaim, verdict } from './define-claim.ts';
import { judgeDefenders } from './shared/defenders.ts';

export const loose = defineClaim({
  name: 'loose',
  usage: ['loose e4'],
  definition: `
No piece or pawn of its own colour defends the piece on the square. Whether something attacks it
does not matter; whether it can be won by captures is told by \`en-prise\`. A pinned defender
counts as a defender. A king is neither loose nor defended.
`,
  source: 'Common practice, no source',
  examples: [
    {
      fen: '4k3/8/8/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'loose e5',
      holds: true,
      because: 'no black piece or pawn defends it',
    },
    {
      fen: '4k3/8/3p4/4n3/8/8/4R3/4K3 w - - 0 1',
      claim: 'loose e5',
      holds: false,
      because: 'the pawn on d6 defends it',
    },
    {
      fen: '2k5/2b5/8/4n3/8/8/2R1R3/4K3 w - - 0 1',
      claim: 'loose e5',
      holds: false,
      because: 'the bishop on c7 defends it',
      note: 'The bishop is pinned and could not take back, but it is a defender; compare `en-prise e5`.',
    },
    {
      fen: '4k3/8/8/8/8/8/8/N3K3 w - - 0 1',
      claim: 'loose a1',
      holds: true,
      note: 'Nothing attacks the knight in the corner, and nothing defends it.',
    },
    { fen: '4k3/8/8/8/8/8/8/4K3 w - - 0 1', claim: 'loose e1', holds: 'empty' },
  ],
  parse: (words) => words.square('the square of a piece'),
  judge: ({ position }, square) =>
    judgeDefenders(position, square, ({ count, some, none }) => verdict(count === 0, none, some)),
});
