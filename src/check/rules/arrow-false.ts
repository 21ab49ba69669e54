import { type Position, readBoard } from '../../chess/index.ts';
import { type Arrow, type Block, treesOf } from '../../model/index.ts';
import { whereOf } from '../course-claims/claims-of.ts';
import { defineCourseRule } from '../course-rule.ts';
import { judgeArrows } from '../shared/judge-arrows.ts';

export const arrowFalse = defineCourseRule({
  id: 'arrow-false',
  severity: 'warning',
  finds: 'An arrow that does not say what it means.',
  documentation: `
Every arrow starts from a piece, of either side, and means one of three things.

- A **threat** is a square that the piece attacks: an enemy piece, or an empty square that it could jump to.
  A pawn also threatens to advance, with one move and on free squares. A threat never ends on a piece of the same side.
- A **guard** is a square that the piece covers, whatever stands there: its own side's piece, an empty square,
  or an enemy piece that it keeps an eye on.
- A **plan** is where the piece may come in one move or several, whatever stands in its way now. A bishop stays on
  squares of its colour. A pawn goes forward, straight ahead past no other pawn, and aside only
  by taking what stands there. Castling takes the rook along. No plan ends on a piece of the same side.

Threats and guards of a bishop, rook or queen may go *through one piece*, of either side: the queen behind a
bishop guards what the bishop guards. A pinned piece threatens and guards as well.

*Arrows of one board belong together.* A plan may go on where an earlier arrow ends (\`f3-e5 e5-g6\`), enter a
square that an earlier arrow left or came to (\`d8-c7 a8-d8\`), and show two squares for one piece
(\`f3-e5 f3-g5\`). A threat or a guard may start where a plan or a threat ends.

The definitions are common practice; where they are sharper than that, it is for the sake of a check.
`,
  examples: [
    {
      title: 'Nothing stands on the square',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 {:threat[f6-e4]} 3. Bb5\n```',
      findings: [
        {
          at: '2:30-2:35',
          message: 'The threat `f6-e4` does not hold after 2...Nc6: f6 is empty.',
        },
      ],
    },
    {
      title: 'Arrows over two lines',
      course: '```moves\n1. e4 e5 {:threat[f6-e4\nd8-h4]} 2. Nf3\n```',
      findings: [
        {
          at: '2:19-3:6',
          message: 'The threat `f6-e4` does not hold after 1...e5: f6 is empty.',
        },
      ],
    },
    {
      title: 'Said a move too early, and a move too late',
      course:
        '```moves\n1. e4 {:threat[f6-e4]} Nf6 2. e5 Nd5 {:threat[e5-f6]} 3. d4 {:threat[f6-e4]} d6\n```',
      findings: [
        {
          at: '2:16',
          message: 'The threat `f6-e4` does not hold after 1.e4: f6 is empty.',
          hint: 'It would hold after 1...Nf6: say it of that position.',
        },
        { at: '2:70', message: 'The threat `f6-e4` does not hold after 3.d4: f6 is empty.' },
      ],
    },
    {
      title: 'A threat on a piece of its own side is a guard',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 {:threat[c6-e5 d7-d6]} 3. Bb5\n```',
      findings: [
        {
          at: '2:30',
          message:
            'The threat `c6-e5` does not hold after 2...Nc6: a pawn of the same side stands on e5.',
          hint: 'It is covered, not threatened: write `guard`.',
        },
      ],
    },
    {
      title: 'Through one piece, but not through two',
      course:
        '```moves\n1. e4 e5 2. Bc4 Nf6 3. d3 d6 4. Bg5 Be7 {:threat[g5-e7] :guard[d8-e7 h8-f8]} 5. Qf3 {:guard[d1-f3] :threat[f3-f7 g5-d8]} O-O\n```',
      findings: [
        {
          at: '2:93',
          message: 'The guard `d1-f3` does not hold after 5.Qf3: d1 is empty.',
        },
        {
          at: '2:114',
          message:
            'The threat `g5-d8` does not hold after 5.Qf3: 2 pieces stand between g5 and d8, and an arrow goes through one at most.',
        },
      ],
    },
    {
      title: 'Plans that no piece can follow',
      course:
        '```diagram fen="rn1qkbnr/ppp1pppp/8/3p1b2/3P1B2/4P3/PPP2PPP/RN1QKBNR b KQkq - 0 3"\nplan: [f1-e5, d4-d5, c2-d3, g1-h1, e8-g8]\n```',
      findings: [
        {
          at: '2:8',
          message:
            'The plan `f1-e5` does not hold in this diagram: the bishop on f1 never comes to a dark square.',
        },
        {
          at: '2:15',
          message:
            'The plan `d4-d5` does not hold in this diagram: a pawn stands on d5, and the pawn on d4 does not take straight ahead.',
        },
        {
          at: '2:22',
          message:
            'The plan `c2-d3` does not hold in this diagram: the pawn on c2 gets to d3 only by taking, and nothing stands there.',
        },
        {
          at: '2:29',
          message:
            'The plan `g1-h1` does not hold in this diagram: a rook of the same side stands on h1.',
        },
        {
          at: '2:36',
          message:
            'The plan `e8-g8` does not hold in this diagram: a knight of the same side stands on g8.',
        },
      ],
    },
    {
      title: 'Plans in several moves, and of several pieces',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. d3 Nf6 {:plan[f3-g5 f3-d2 d2-f1 f1-g3 e1-g1 f1-e1 c2-c3 d3-d4] :threat[g5-f7]} 5. O-O\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    for (const block of chapter.blocks) {
      for (const { position, arrows, where, beside } of boardsOf(block)) {
        for (const { arrow, because, isGuard } of judgeArrows(readBoard(position), arrows)) {
          const { meaning, from, to, place } = arrow;
          yield {
            place,
            message: `The ${meaning} \`${from}-${to}\` does not hold ${where}: ${because}.`,
            ...hintFor(arrow, isGuard, beside),
          };
        }
      }
    }
  },
});

interface DrawnBoard {
  readonly position: Position;
  readonly arrows: readonly Arrow[];
  readonly where: string;
  /** The positions before and after it, of which the arrow may have been meant. */
  readonly beside: readonly Neighbour[];
}

interface Neighbour {
  readonly position: Position;
  readonly where: string;
}

function hintFor(
  arrow: Arrow,
  isGuard: boolean,
  beside: readonly Neighbour[],
): { readonly hint?: string } {
  if (isGuard) return { hint: 'It is covered, not threatened: write `guard`.' };
  const meant = beside.find(
    ({ position }) => judgeArrows(readBoard(position), [arrow]).length === 0,
  );
  return meant ? { hint: `It would hold ${meant.where}: say it of that position.` } : {};
}

function* boardsOf(block: Block): Generator<DrawnBoard> {
  for (const tree of treesOf(block)) {
    for (const node of tree) {
      const { position, arrows } = node;
      // What is said of a diagram's own board stands among its arrows.
      const isDrawn = block.kind === 'diagram' && !block.at && node.index === block.shows?.node;
      if (!position || arrows.length === 0 || isDrawn) continue;
      const near = [tree[node.children[0] ?? -1], tree[node.parent ?? -1]];
      const beside = near.flatMap((other) =>
        other?.move && other.position
          ? [{ position: other.position, where: whereOf(block, tree, other) }]
          : [],
      );
      yield { position, arrows, where: whereOf(block, tree, node), beside };
    }
  }
  if (block.kind === 'diagram' && block.position && block.arrows.length > 0) {
    yield { position: block.position, arrows: block.arrows, where: 'in this diagram', beside: [] };
  }
}
