import { numberSign } from '../../chess/index.ts';
import { type Chapter, type MoveNode, type ProseMove, placeOfNode } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';
import { walkTexts } from '../walk-course.ts';

export const proseMoveUnknown = defineCourseRule({
  id: 'prose-move-unknown',
  severity: 'error',
  finds: 'A move with a number, in the text, that no block of the chapter has.',
  documentation: `
A move written as inline code with its number becomes a link to that move in the nearest earlier block
of the chapter, variations included; so the text cannot speak of a move that the student cannot see.
Several moves in one piece of code must follow each other in the block.

Inline code without a move number, such as \`Nf3\`, is left alone.
`,
  examples: [
    {
      title: 'The block has another move there',
      course: '```moves\n1. d4 d5 2. c4 e6\n```\n\nAfter `2...c6` all is different.',
      findings: [
        {
          start: '5:7',
          end: '5:15',
          message: 'No block above has 2...c6.',
          hint: 'There the chapter has 2...e6. Put the move into a block, as a variation, or write it without its number.',
        },
      ],
    },
    {
      title: 'Links to the main line, to a variation, to a run of moves',
      course:
        '```moves\n1. d4 d5 2. c4 e6 (2... c6 3. Nf3) 3. Nc3\n```\n\n`1.d4` and `2...c6 3.Nf3`, not `Nf3`.',
      findings: [],
    },
  ],
  *find(course) {
    const found: { move: ProseMove; chapter: Chapter; place: ReturnType<typeof placeOfNode> }[] =
      [];
    walkTexts(course, (node, chapter) => {
      if (node.type !== 'proseMoves') return;
      const move = node.moves.find(({ target }) => !target);
      if (move) found.push({ move, chapter, place: placeOfNode(node, chapter.file) });
    });
    for (const { move, chapter, place } of found) {
      const name = numberSign(move) + move.san;
      const there = movesAt(chapter, move);
      yield {
        place,
        message: `No block above has ${name}.`,
        hint: there.includes(name)
          ? 'The chapter has it only further down: put these words behind that block, or write the move without its number.'
          : `${there.length > 0 ? `There the chapter has ${there.join(', ')}. ` : ''}Put the move into a block, as a variation, or write it without its number.`,
      };
    }
  },
});

/** What the chapter's blocks have at that move number, at most six. */
function movesAt(chapter: Chapter, { number, color }: ProseMove): string[] {
  const names = new Set<string>();
  for (const block of chapter.blocks) {
    if (block.kind !== 'moves') continue;
    for (const node of block.nodes as readonly MoveNode[]) {
      if (node.move?.number === number && node.move.color === color) {
        names.add(moveName(node, undefined));
      }
    }
  }
  return [...names].slice(0, 6);
}
