import { movesOf } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { meantHint } from '../shared/move-fault-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const gameIllegal = defineCourseRule({
  id: 'game-illegal',
  severity: 'error',
  always: true,
  finds: 'A game that cannot have been played so.',
  documentation: `
The moves of a \`game\` are played from the initial position, or from the position of its \`FEN\` tag. A
move that is not legal there was not played; the finding stands in the game's own file if it has one.
`,
  examples: [
    {
      title: 'A knight that is not there',
      course: {
        'games/club.pgn': '[White "A"]\n\n1. e4 e5 2. Nd4 *\n',
        'chapters/1.md': '---\ntitle: One\n---\n```game file="games/club.pgn"\n```',
      },
      findings: [
        {
          file: 'games/club.pgn',
          at: '3:13-3:16',
          message:
            "The game cannot have been played so: 2.Nd4 is not possible, no knight of White's can reach d4.",
        },
      ],
    },
  ],
  *inChapter({ chapter }) {
    for (const { block, node, parent } of movesOf(chapter)) {
      if (block.kind !== 'game' || !node.written) continue;
      if (!node.fault || node.fault.kind === 'after-fault') continue;
      const hint = meantHint(node.fault.meant);
      yield {
        place: node.written.place,
        message: `The game cannot have been played so: ${moveName(node, parent)} is not possible, ${node.fault.reason}.`,
        ...(hint === undefined ? {} : { hint }),
        related:
          node.written.place.file === block.place.file
            ? []
            : [
                {
                  place: { ...block.place, end: block.place.start },
                  message: 'the game is shown here',
                },
              ],
      };
    }
  },
});
