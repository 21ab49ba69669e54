import { isMarkedBad, taughtNodes } from '../../model/index.ts';
import { isAssessment } from '../../movetext/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { pawnsText } from '../engine/engine-words.ts';
import { judgeMove } from '../engine/judge-move.ts';

export const engineSign = defineCourseRule({
  id: 'engine-sign',
  severity: 'warning',
  byEngine: true,
  finds: 'A bad move of the other side, by an engine’s count, without a sign that says so.',
  documentation: `
What an engine says of the course comes from \`linewright engine\`; without its results this rule is
silent. A student who sees a mistake of the other side should know it for one: else the line looks like
theory, and the chance that it gives like nothing special. A move is told when it loses more than the
setting \`bad\`, 1.5 pawns unless \`course.yaml\` says otherwise, and has neither \`?\`, \`??\` or \`?!\` nor an
assessment sign behind it.
`,
  examples: [
    {
      title: 'A mistake that looks like theory',
      course: '```moves\n1. e4 e5 2. Nf3 f6 3. Nxe5\n```',
      engine: {
        '1. e4 e5 2. Nf3': '-0.30 Nc6 Bb5; -0.40 d6',
        '1. e4 e5 2. Nf3 f6': '+1.90 Nxe5 Qe7',
      },
      findings: [
        {
          at: '2:17-2:19',
          message:
            '2...f6 has no sign, and is more than 1.5 pawns worse than 2...Nc6: for Black, Example 1 at depth 20 counts -1.90 against -0.30.',
          hint: 'Mark it with ?, ?? or ?!; better is 2...Nc6 3.Bb5.',
        },
      ],
    },
    {
      title: 'It says so',
      course: '```moves\n1. e4 e5 2. Nf3 f6? 3. Nxe5\n```',
      engine: {
        '1. e4 e5 2. Nf3': '-0.30 Nc6',
        '1. e4 e5 2. Nf3 f6': '+1.90 Nxe5',
      },
      findings: [],
    },
    {
      title: 'Behind a bad move of your own anything may follow',
      course: '```moves\n1. e4 e5 2. Nf3 (2. f3? a5 3. f4) 2... Nc6 3. Bb5\n```',
      engine: {
        '1. e4 e5 2. f3': '+0.90 Bc5',
        '1. e4 e5 2. f3 a5': '+1.00 f4',
      },
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const { side, margins } = course;
    if (side === 'both' || !course.ask('engineRan', '')) return;
    for (const block of chapter.blocks) {
      if (block.kind !== 'moves') continue;
      for (const node of taughtNodes(block, side)) {
        if (node.move?.color === side || isMarkedBad(node) || node.glyphs.some(isAssessment))
          continue;
        const parent = node.parent === undefined ? undefined : block.nodes[node.parent];
        const judged = judgeMove(course, parent?.position, node);
        if (!judged || judged.loss <= margins.bad) continue;
        const { name, better, line, against } = judged;
        yield {
          place: placeOf(node, block),
          message: `${name} has no sign, and is more than ${pawnsText(margins.bad)} worse than ${better}: ${against}.`,
          hint: `Mark it with ?, ?? or ?!; better is ${line}.`,
        };
      }
    }
  },
});
