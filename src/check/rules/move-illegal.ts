import { makeMoveFaultRule } from '../shared/move-fault-rule.ts';

export const moveIllegal = makeMoveFaultRule('illegal', {
  id: 'move-illegal',
  finds: 'A move that the rules of chess do not allow in its position.',
  documentation: `
Every move of every block is played on the board that the moves before it have made. A move that
cannot be played there is an error: nothing behind it in its line can be shown or checked.

The finding says what stands in the way, and names the legal moves that were probably meant. Only
the first broken move of a line is told; mend it, and the moves behind it are judged again.
Variations that branch off before it are judged all the same.
`,
  examples: [
    {
      title: 'A pinned knight',
      course: '```moves\n1. d4 d5 2. c4 e6 3. Nc3 Bb4 4. Ne4\n```',
      findings: [
        {
          at: '2:33-2:36',
          message:
            '4.Ne4 cannot be played: the knight on c3 is pinned to the king on e1 by the bishop on b4.',
          hint: 'Did you mean e4 or Nf3?',
        },
      ],
    },
    {
      title: 'A variation that stands one move too late',
      course: '```moves\n1. e4 e5 2. Nf3 ( 1... c5 ) Nc6\n```',
      findings: [
        {
          at: '2:24',
          message: "2.c5 cannot be played: it is White's move here, and the pawn on c7 is Black's.",
          hint: 'In place of 1...e5 it can be played: put the variation behind that move.',
        },
      ],
    },
    {
      title: 'An answer that cannot be played',
      course:
        '```exercise fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"\nask: Forward!\nanswer: e5\nwrong: Kd2\n```',
      findings: [
        {
          at: '3:9-3:11',
          message: '1.e5 cannot be played: the pawn on e2 cannot go as far as e5 in one move.',
          hint: 'Did you mean e3 or e4?',
        },
      ],
    },
    {
      title: 'R is the king in Spanish letters, and what was meant is written T',
      course: {
        'course.yaml': 'title: Test\nid: test\nside: both\npieces: es\n',
        'chapters/1.md': '```moves\n1. e4 e5 2. Cf3 Cc6 3. Ab5 a6 4. O-O Cf6 5. Re1\n```',
      },
      findings: [
        {
          at: '2:45-2:48',
          message:
            '5.Ke1 cannot be played: the king on g1 moves one square only, and e1 is further away.',
          hint: 'In English letters this would be a move, but with `pieces: es` it is written Te1.',
        },
      ],
    },
    {
      title: 'A variation on a broken line is judged all the same',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 (2... Nf6 3. Nxe5) 3. Bb5 a6\n```',
      findings: [],
    },
  ],
});
