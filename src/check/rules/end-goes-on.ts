import { type MoveNode, movesOf } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const endGoesOn = defineCourseRule({
  id: 'end-goes-on',
  severity: 'warning',
  finds: 'A line that goes on behind the place where it says that it ends.',
  documentation: `
\`:end[…]\` says that a line ends on purpose, and why. Moves behind it contradict that: students practise and
compare games as if the line went on. A move that is shown as an option (\`:option\`) goes on with nothing.
`,
  examples: [
    {
      title: 'Moves were added behind the end',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 {:end[Enough for us.]} 3. Bc4 Bc5\n```',
      findings: [
        {
          at: '2:22-2:42',
          message: 'The line ends here by its own words, and goes on with 3.Bc4.',
          hint: 'Move `:end[…]` behind the last move of the line, or take it out.',
        },
      ],
    },
    {
      title: 'An end, and options behind another',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bc4 {:end[Enough for us.]}\n```\n\n```moves\n1. e4 c5 2. Nf3 {:end[Another course.]} d6 {:option[for the curious]} 3. d4 \n```',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    const told = new Set<MoveNode>();
    for (const { block, node, parent } of movesOf(chapter)) {
      if (block.kind !== 'moves' || told.has(parent)) continue;
      const end = parent.statements.find(({ name }) => name === 'end');
      if (end === undefined || node.statements.some(({ name }) => name === 'option')) continue;
      told.add(parent);
      yield {
        place: end.place,
        message: `The line ends here by its own words, and goes on with ${moveName(node, parent)}.`,
        hint: 'Move `:end[…]` behind the last move of the line, or take it out.',
      };
    }
  },
});
