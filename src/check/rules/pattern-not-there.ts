import { type Piece, readBoard } from '../../chess/index.ts';
import { matchPattern, type PatternBlock } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { placeOfName } from '../shared/place-of-name.ts';

export const patternNotThere = defineCourseRule({
  id: 'pattern-not-there',
  severity: 'error',
  finds: 'A pattern that does not hold where it is said to.',
  documentation: `
A \`pattern\` holds in a position if each of its pieces stands on its square and its empty squares are
empty; other pieces do not matter. With \`reversed: true\` it also holds with the colours exchanged, the
board turned upside down. Under \`at\` stand the named positions where it must hold.
`,
  examples: [
    {
      title: 'The pawn has moved on',
      course:
        '```moves\n1. e4 e5 {:here[open]}\n```\n\n```pattern\ntitle: Pawn on e4\nwhite: e4 Nf3\nat: open\n```',
      side: 'both',
      findings: [
        {
          at: '8:5-8:9',
          message: 'The pattern does not hold in `open`: no white knight stands on f3.',
          hint: 'Correct the pattern, or take the name out of `at`.',
        },
      ],
    },
    {
      title: 'It holds, once with the colours exchanged',
      course:
        '```moves\n1. e4 {:here[a]} e5\n```\n\n```moves\n1. Nf3 e5 {:here[b]}\n```\n\n```pattern\ntitle: King pawn forward\nwhite: e4\nempty: e2\nat: a b\nreversed: true\n```',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'pattern') continue;
      for (const { name, place } of block.at) {
        const position = course.ask('name', name);
        if (!position) continue;
        if (matchPattern(block, position)) continue;
        yield {
          place,
          message: `The pattern does not hold in \`${name}\`: ${missing(block, readBoard(position))}.`,
          hint: 'Correct the pattern, or take the name out of `at`.',
          related: placeOfName(name, course),
        };
      }
    }
  },
});

/** What is missing, first of all, with the colours as written. */
function missing({ pieces, empty }: PatternBlock, board: ReadonlyMap<string, Piece>): string {
  const piece = pieces.find(({ color, kind, square }) => {
    const there = board.get(square);
    return there?.kind !== kind || there.color !== color;
  });
  if (piece) return `no ${piece.color} ${piece.kind} stands on ${piece.square}`;
  const square = empty.find((name) => board.has(name)) ?? '';
  const there = board.get(square);
  return `${square} is not empty, a ${there?.color} ${there?.kind} stands there`;
}
