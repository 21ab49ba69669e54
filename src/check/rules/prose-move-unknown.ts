import { numberedSan } from '../../chess/index.ts';
import {
  bareSan,
  type Chapter,
  type MoveNode,
  movesSpokenOf,
  type ProseMove,
  textNodes,
  treesOf,
} from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';

export const proseMoveUnknown = defineCourseRule({
  id: 'prose-move-unknown',
  severity: 'error',
  finds: 'A move with a number, in the text, that no block of the chapter has.',
  documentation: `
A move written as inline code with its number becomes a link to that move in the nearest earlier block
of the chapter, variations included, or in the next one behind it; so the text cannot speak of a move that the
student cannot see. Several moves in one piece of code must follow each other in the block. Moves of an exercise
and of a diagram's \`after="…"\` may be named too; they are no links.

Inline code without a move number, such as \`Nf3\`, is left alone.
`,
  examples: [
    {
      title: 'The block has another move there',
      course: '```moves\n1. d4 d5 2. c4 e6\n```\n\nAfter `2...c6` all is different.',
      findings: [
        {
          at: '5:8-5:14',
          message: 'No block of the chapter has 2...c6.',
          hint: 'There the chapter has 2...e6. Put the move into a block, as a variation, or write it without its number.',
        },
      ],
    },
    {
      title: 'Links to the main line, to a variation, to a run of moves',
      course:
        '```moves\n1. d4 d5 2. c4 e6 (2... c6 3. Nf3) 3. Nc3\n```\n\n`1.d4` and `2...c6 3.Nf3`, not `Nf3`; `3.♘c3` too.',
      findings: [],
    },
    {
      title: 'An overview above the blocks',
      course:
        '| against | move |\n| --- | --- |\n| `1...d5` | `2.c4` |\n\n```moves\n1. d4 d5 2. c4 e6 3. Nc3\n```',
      findings: [],
    },
    {
      title: 'Moves of an exercise and of a diagram',
      course:
        '```moves\n1. d4 d5 2. c4\n```\n\n```diagram after="1. e4 e5 2. Nf3 Nc6"\ncaption: after `2...Nc6`\n```\n\n```exercise after="1. f3 e5 2. g4"\nask: How does Black mate?\nanswer: Qh4#\n```\n\nBehind `2.Nf3` and `2...Qh4#`.',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    const unsought = new Set(chapter.spoken.unsought);
    for (const node of textNodes(chapter, 'proseMoves')) {
      if (unsought.has(node.id)) continue;
      const targets = movesSpokenOf(chapter, node);
      if (targets.every((target) => target) || isInPositionBlock(chapter, node.moves)) continue;
      const move = node.moves.find((_, index) => !targets[index]);
      if (!move) continue;
      const name = numberedSan(move);
      const there = movesAt(chapter, move);
      yield {
        place: { file: chapter.file, ...move.range },
        message: `No block of the chapter has ${name}.`,
        hint: `${there.size > 0 ? `There the chapter has ${[...there].slice(0, most).join(', ')}. ` : ''}Put the move into a block, as a variation, or write it without its number.`,
      };
    }
  },
});

/**
 * Whether all the moves stand in lines that have no address: of an exercise, or of what leads to a still board.
 */
function isInPositionBlock({ blocks }: Chapter, moves: readonly ProseMove[]): boolean {
  return blocks.some((block) => {
    if (block.kind !== 'exercise' && block.kind !== 'diagram') return false;
    return treesOf(block).some((tree) =>
      moves.every((wanted) =>
        tree.some(({ move }) => {
          if (move?.number !== wanted.number || move.color !== wanted.color) return false;
          return bareSan(move.san) === bareSan(wanted.san);
        }),
      ),
    );
  });
}

/** So many moves of the chapter are named. */
const most = 6;

type MovesByNumber = ReadonlyMap<string, ReadonlySet<string>>;

const known = new WeakMap<Chapter, MovesByNumber>();

/** What the chapter's blocks have at that move number. */
function movesAt(chapter: Chapter, { number, color }: ProseMove): ReadonlySet<string> {
  const moves = known.get(chapter) ?? movesByNumber(chapter);
  known.set(chapter, moves);
  return moves.get(`${number} ${color}`) ?? new Set();
}

function movesByNumber({ blocks }: Chapter): MovesByNumber {
  const moves = new Map<string, Set<string>>();
  for (const block of blocks) {
    if (block.kind !== 'moves') continue;
    for (const node of block.nodes as readonly MoveNode[]) {
      if (!node.move) continue;
      const place = `${node.move.number} ${node.move.color}`;
      const there = moves.get(place) ?? new Set();
      moves.set(place, there.add(moveName(node, undefined)));
    }
  }
  return moves;
}
