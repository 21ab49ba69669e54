import { firstSign, type PatternBlock } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { patternAsked } from '../view/index.ts';

export const patternNowhere = defineCourseRule({
  id: 'pattern-nowhere',
  severity: 'warning',
  finds: 'A pattern that no position of the course has, or only such as a mistake leads to.',
  documentation: `
A pattern is a picture of positions that the course teaches: every position of its \`moves\` blocks that has it
is listed. If none has it, a piece stands on a wrong square, or the lines that lead there are missing. If every
position that has it lies behind a \`?\` or \`??\` of the course's own side (of either side in a course for
both), a student who follows the advice never meets it.
`,
  examples: [
    {
      title: 'No position has it',
      course: '```moves\n1. e4 e5 2. Nf3\n```\n\n```pattern\ntitle: Fianchetto\nwhite: g3 Bg2\n```',
      findings: [
        {
          at: '5:1',
          message: 'No position of the course has this pattern.',
          hint: 'Correct its squares, or add the line in which it arises.',
        },
      ],
    },
    {
      title: 'Only behind a mistake',
      course:
        '```moves\n1. e4 e5 2. Nf3\n  ( 2. f3? {weakens the king} 2... Nf6 )\n```\n\n```pattern\ntitle: A wall\nwhite: e4 f3\n```',
      findings: [
        {
          at: '6:1',
          message:
            'Only positions behind a mistake have this pattern, such as the one after 2.f3: whoever follows the course never meets it.',
          hint: 'Correct its squares, or add a line in which it arises.',
        },
      ],
    },
    {
      title: 'Positions of a block have it',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6\n```\n\n```pattern\ntitle: Knights out\nwhite: Nf3\nblack: Nc6\n```',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const block of chapter.blocks) {
      // A pattern that no board can have, or without pieces, has a finding of its own.
      if (block.kind !== 'pattern' || !isPossible(block)) continue;
      const places = course.ask('matches', patternAsked(block));
      if (!places?.every(({ refuted }) => refuted)) continue;
      const [first] = places;
      const there = first && course.ask('positionPlace', first.key);
      yield {
        place: firstSign(block.place),
        message: first
          ? `Only positions behind a mistake have this pattern, such as the one after ${first.name}: whoever follows the course never meets it.`
          : 'No position of the course has this pattern.',
        hint: first
          ? 'Correct its squares, or add a line in which it arises.'
          : 'Correct its squares, or add the line in which it arises.',
        ...(there ? { related: [{ place: there, message: 'it stands here' }] } : {}),
      };
    }
  },
});

function isPossible({ pieces, empty }: PatternBlock): boolean {
  const squares = [...pieces.map(({ square }) => square), ...empty];
  const kings = pieces.filter(({ kind }) => kind === 'king').map(({ color }) => color);
  return (
    pieces.length > 0 &&
    new Set(squares).size === squares.length &&
    new Set(kings).size === kings.length &&
    !pieces.some(({ kind, square }) => kind === 'pawn' && /[18]$/.test(square))
  );
}
