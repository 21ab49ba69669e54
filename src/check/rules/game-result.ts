import { isMate, isStalemate, sideToMove } from '../../chess/index.ts';
import { type MoveNode, mainLine } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';

export const gameResult = defineCourseRule({
  id: 'game-result',
  severity: 'warning',
  finds: 'A result that is at odds with the final position, or with the game’s own tag.',
  documentation: `
A game that ends in mate is won by the side that mates, and one that ends in stalemate is drawn (FIDE
Laws of Chess, articles 5.1 and 5.2). The result behind the moves must be the one of the \`Result\` tag
(PGN standard, 8.2.6).
`,
  examples: [
    {
      title: 'Black has mated, and White is said to have won',
      course: '```game\n1. f3 e5 2. g4 Qh4# 1-0\n```',
      findings: [
        {
          at: '2:16-2:20',
          message: 'The game ends in mate, so its result is 0-1 and not 1-0.',
          hint: 'Correct the result, or the moves.',
        },
      ],
    },
    {
      title: 'The tag says otherwise',
      course: '```game\n[Result "1/2-1/2"]\n\n1. e4 e5 1-0\n```',
      findings: [
        {
          at: '2:10-2:17',
          message: 'The tag says 1/2-1/2, and behind the moves stands 1-0.',
          hint: 'Correct one of the two.',
        },
      ],
    },
    {
      title: 'Only the tag tells the result of a mate',
      course: '```game\n[Result "1-0"]\n\n1. f3 e5 2. g4 Qh4#\n```',
      findings: [
        {
          at: '2:10-2:13',
          message: 'The game ends in mate, so its result is 0-1 and not 1-0.',
        },
      ],
    },
    { title: 'A sound game', course: '```game\n1. f3 e5 2. g4 Qh4# 0-1\n```', findings: [] },
  ],
  *inChapter({ chapter }) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'game' && block.kind !== 'moves') continue;
      const { result, tags, tagPlaces } = block;
      const tag = tags.Result === '?' ? undefined : tags.Result;
      const tagPlace = tagPlaces.Result;
      if (result !== undefined && tag !== undefined && tagPlace && tag !== result) {
        yield {
          place: tagPlace,
          message: `The tag says ${tag}, and behind the moves stands ${result}.`,
          hint: 'Correct one of the two.',
        };
      }
      const said = result ?? tag;
      if (said === undefined) continue;
      const last = mainLine(block.nodes).at(-1);
      const end = last && outcome(last);
      if (!end || said === end.result) continue;
      yield {
        place: result === undefined && tagPlace ? tagPlace : placeOf(last, block),
        message: `The game ends in ${end.name}, so its result is ${end.result} and not ${said}.`,
        hint: 'Correct the result, or the moves.',
      };
    }
  },
});

function outcome({ position }: MoveNode): { name: string; result: string } | undefined {
  if (!position) return undefined;
  if (isStalemate(position)) return { name: 'stalemate', result: '1/2-1/2' };
  if (!isMate(position)) return undefined;
  return { name: 'mate', result: sideToMove(position) === 'white' ? '0-1' : '1-0' };
}
