import { movesOf } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { pawnsText } from '../engine/engine-words.ts';
import { judgeMove } from '../engine/judge-move.ts';
import { advisedIn } from '../shared/advised-in.ts';

export const engineAdvice = defineCourseRule({
  id: 'engine-advice',
  severity: 'warning',
  byEngine: true,
  finds: 'Advice that an engine counts much worse than its best move.',
  documentation: `
What an engine says of the course comes from \`linewright engine\`; without its results this rule is
silent. Advice may cost a little, since a student has to understand it: it is told when it loses more than
the setting \`margin\` against the best move, 0.8 pawns unless \`course.yaml\` says otherwise. A side that is
five pawns ahead, or mates, has won, and more is no better.

Follow the line that the engine gives, and believe your own eyes: change the advice, or except it with the
reason.
`,
  examples: [
    {
      title: 'The advice leaves a pawn, and with it the game',
      course: '```moves\n1. e4 e5 2. Nf3 f6 3. Bc4\n```',
      engine: {
        '1. e4 e5 2. Nf3 f6': '+1.90 Nxe5 Qe7 Nf3; +0.85 Bc4 Nc6',
      },
      findings: [
        {
          at: '2:23-2:26',
          message:
            'The advice 3.Bc4 is more than 0.8 pawns worse than 3.Nxe5: for White, Example 1 at depth 20 counts +0.85 against +1.90.',
          hint: 'Its line is 3.Nxe5 Qe7 4.Nf3. Change the advice, or except it with `:allow[engine-advice …]` and the reason.',
        },
      ],
    },
    {
      title: 'A move that the engine did not have on its list is judged by the position after it',
      course: '```moves\n1. f3 e5 2. g4\n```',
      engine: {
        '1. f3 e5': '-0.60 e4; -0.70 Nc3',
        '1. f3 e5 2. g4': '#1 Qh4#',
      },
      findings: [
        {
          at: '2:13-2:15',
          message:
            'The advice 2.g4 is more than 0.8 pawns worse than 2.e4: for White, Example 1 at depth 20 counts mated in 1 against -0.60.',
        },
      ],
    },
    {
      title: 'A little worse is no matter, nor is what wins anyway',
      course: {
        'chapters/1.md': '```moves\n1. e4 e5 2. Bc4 Ke7 3. Bb5\n```',
      },
      engine: {
        '1. e4 e5': '+0.35 Nf3; +0.05 Bc4',
        '1. e4 e5 2. Bc4 Ke7': '+9.10 Qh5; +5.20 Bb5',
      },
      findings: [],
    },
    {
      title: 'A wider margin',
      course: {
        'course.yaml': 'title: Example\nid: example\nside: white\nengine:\n  margin: 1.5\n',
        'chapters/1.md': '```moves\n1. e4 e5 2. Nf3 f6 3. Bc4\n```',
      },
      engine: { '1. e4 e5 2. Nf3 f6': '+1.90 Nxe5; +0.85 Bc4' },
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const { side, margins } = course;
    if (side === 'both' || !course.ask('engineRan', '')) return;
    for (const { block, node, parent } of movesOf(chapter)) {
      if (block.kind !== 'moves' || !advisedIn(block, course).has(node.index)) continue;
      const judged = judgeMove(course, parent.position, node);
      if (!judged || judged.loss <= margins.margin) continue;
      const { name, better, line, against } = judged;
      yield {
        place: placeOf(node, block),
        message: `The advice ${name} is more than ${pawnsText(margins.margin)} worse than ${better}: ${against}.`,
        hint: `Its line is ${line}. Change the advice, or except it with \`:allow[engine-advice …]\` and the reason.`,
      };
    }
  },
});
