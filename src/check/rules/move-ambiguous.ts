import { makeMoveFaultRule } from '../shared/move-fault-rule.ts';

export const moveAmbiguous = makeMoveFaultRule('ambiguous', {
  id: 'move-ambiguous',
  finds: 'A move that could be either of two pieces.',
  documentation: `
Where two pieces of one kind can go to the square, SAN names the file that the piece comes from,
else its rank, else its square (PGN standard, 8.2.3.4). A piece that is pinned to its king does
not count, since it cannot move there.
`,
  examples: [
    {
      title: 'Two knights can go to d2',
      course: '```moves\n1. d4 d5 2. Nf3 Nf6 3. e3 e6 4. Bd3 c5 5. c3 Nc6 6. Nd2\n```',
      findings: [
        {
          at: '2:53-2:56',
          message:
            '6.Nd2 is not one move: the knight on f3 and the knight on b1 can both go to d2.',
          hint: 'Did you mean Nfd2 or Nbd2?',
        },
      ],
    },
  ],
});
