import { numberSign } from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import { type MoveNode, movesOf } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const moveNumber = defineCourseRule({
  id: 'move-number',
  severity: 'error',
  finds: 'A move number that is not the number of its move.',
  documentation: `
Numbers may be left out, and any number of periods may follow them, but a number that is written
must be right (PGN standard, 8.2.2.1): a wrong one means that a move is missing or stands in the
wrong place. Numbers that are all wrong by the same count are told once, at the first of them.
Periods as in \`5...\` before a move by White are told too.

\`linewright check --fix\` writes the right numbers.
`,
  examples: [
    {
      title: 'A number was skipped',
      course: '```moves\n1. d4 d5 2. c4 e6 4. Nc3 c5 5. cxd5\n```',
      findings: [
        {
          at: '2:19-2:21',
          message: 'This is move 3, not 4: Nc3 is played at 3.Nc3.',
          hint: 'Is a move missing before it? If not, write 3. (1 more number behind it is wrong likewise).',
        },
      ],
      fixed: '```moves\n1. d4 d5 2. c4 e6 3. Nc3 c5 4. cxd5\n```',
    },
    {
      title: 'Every legal spelling of a number',
      course: '```moves\n1.d4 1...d5 2 c4 2. ... e6 Nc3 3...c5\n```',
      findings: [],
    },
    {
      title: 'Three periods before a move by White',
      course: '```moves\n1. d4 d5 2... c4\n```',
      findings: [
        {
          at: '2:10-2:14',
          message: '2... stands before a move by Black, but it is White who plays 2.c4.',
          hint: 'Is a move missing before it? If not, write 2.',
        },
      ],
      fixed: '```moves\n1. d4 d5 2. c4\n```',
    },
  ],
  *inChapter({ chapter }) {
    // A run of numbers that are off by one count is one finding; it is kept by the last node.
    const runs = new Map<MoveNode, { finding: Mutable<Finding>; off: number; more: number }>();
    for (const { node, parent } of movesOf(chapter)) {
      const number = node.written?.number;
      const { move } = node;
      const before = runs.get(parent);
      if (!number || !move) {
        if (before) runs.set(node, before);
        continue;
      }
      const off = number.value - move.number;
      const wrongSide = move.color === 'white' && number.dots > 1;
      if (off === 0 && !wrongSide) continue;
      const right = numberSign(move);
      const fix = { place: number.place, text: right };
      if (before && before.off === off && off !== 0) {
        before.more++;
        before.finding.fixes = [...(before.finding.fixes ?? []), fix];
        before.finding.hint = `${advice(before.finding.fixes[0]?.text ?? right)} (${before.more} more ${before.more === 1 ? 'number behind it is' : 'numbers behind it are'} wrong likewise).`;
        runs.set(node, before);
        continue;
      }
      const finding: Mutable<Finding> = {
        place: number.place,
        message: wrongSide
          ? `${number.text} stands before a move by Black, but it is White who plays ${moveName(node, parent)}.`
          : `This is move ${move.number}, not ${number.value}: ${move.san} is played at ${moveName(node, parent)}.`,
        hint: advice(right),
        fixes: [fix],
      };
      runs.set(node, { finding, off, more: 0 });
    }
    yield* new Set([...runs.values()].map(({ finding }) => finding));
  },
});

type Mutable<T> = { -readonly [Key in keyof T]: T[Key] };

function advice(right: string): string {
  return `Is a move missing before it? If not, write ${right}`.replace(/\.$/, '.');
}
