import type { PlayedMove } from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import { type Block, isMarkedBad, type MoveNode, movesOf } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { advisedIn } from '../shared/advised-in.ts';
import { moveName } from '../shared/move-name.ts';
import { after, whereIs } from '../shared/words.ts';
import type { CourseView } from '../view/index.ts';

export const adviceConflict = defineCourseRule({
  id: 'advice-conflict',
  severity: 'error',
  finds: 'Two recommendations in one position, anywhere in the course.',
  documentation: `
The advice is the first move that a block gives the course's side in a position; its variations are
only mentioned. A student who meets the position must find one answer, by whatever order of moves
it came about: transpositions and other chapters count.

Nothing behind an \`:option\`, or behind a bad move of the course's side, is advice.

A move that is advised in one place and called bad in another, by \`?\`, \`??\` or \`?!\`, is a conflict too.

Keep one advice. Mark a move that is only an alternative with \`:option[reason]\`, a bad one with
\`?\`, \`??\` or \`?!\`, or make it a variation.
`,
  examples: [
    {
      title: 'Two chapters advise differently after a transposition',
      course: {
        'chapters/1.md': '---\ntitle: One\n---\n```moves\n1. d4 d5 2. c4 e6 3. Nc3 Nf6 4. Bg5\n```',
        'chapters/2.md':
          '---\ntitle: Two\n---\n```moves\n1. c4 e6 2. Nc3 d5 3. d4 Nf6 4. cxd5\n```',
      },
      findings: [
        {
          file: 'chapters/2.md',
          at: '5:4',
          message:
            'At the start of the block White is told to play 1.c4, but in chapters/1.md, line 5, 1.d4 is the advice in this position.',
        },
        {
          file: 'chapters/2.md',
          at: '5:33',
          message:
            'After 3...Nf6 White is told to play 4.cxd5, but in chapters/1.md, line 5, 4.Bg5 is the advice in this position.',
          hint: 'Keep one of them; mark the other with `:option[…]`, or with ? if it is bad.',
        },
      ],
    },
    {
      title: 'Advised here, called bad there',
      course:
        '```moves\n1. e4 e5 2. Nf3\n```\n\n```moves\n1. e4 e5 2. Bc4 {:option[for a change]} (2. Nf3?!) 2... Nf6 3. d3\n```',
      findings: [
        {
          at: '6:45',
          message: 'In line 2 2.Nf3 is the advice in this position, and here it is called bad.',
          hint: 'Take back the sign or the advice.',
        },
      ],
    },
    {
      title: 'An alternative that says so',
      course:
        '```moves\n1. e4 e5 2. Nf3\n```\n\n```moves\n1. e4 e5 2. Bc4 {:option[for a change]} Nf6\n```',
      findings: [],
    },
    {
      title:
        'What stands behind an alternative is no advice, in another block that starts there either',
      course:
        '```moves\n1. e4 e5 2. Nf3 (2. Bc4 {:option[for a change] :here[bishop]} Nf6 3. d3)\n```\n\n```moves from="bishop"\n2... Nf6 3. Nc3\n```',
      findings: [],
    },
    {
      title: 'Black’s variations are no advice',
      course: '```moves\n1. e4 c5 (1... e5 2. Nf3) 2. Nf3\n```',
      side: 'black',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const side = course.side === 'white' ? 'White' : 'Black';
    for (const { block, node, parent } of movesOf(chapter)) {
      if (block.kind !== 'moves' || !parent.position || !node.move) continue;
      const { key } = parent.position;
      if (node.move.color === course.side && isMarkedBad(node)) {
        yield* findBadAdvice(block, node, node.move, course, key);
        continue;
      }
      if (!advisedIn(block, course).has(node.index)) continue;
      const first = course.ask('advice', key);
      if (!first || first.san === node.move.san) continue;
      const there = course.ask('advicePlace', key);
      if (!there) continue;
      const place = placeOf(node, block);
      const grandparent = parent.parent === undefined ? undefined : block.nodes[parent.parent];
      yield {
        place,
        message: `${after(parent, grandparent)} ${side} is told to play ${moveName(node, parent)}, but ${whereIs(there, place)}, ${first.name} is the advice in this position.`,
        hint: 'Keep one of them; mark the other with `:option[…]`, or with ? if it is bad.',
        related: [{ place: there, message: `${first.name} is advised here` }],
      };
    }
  },
});

/** A move that is called bad, and advised elsewhere; `key` is that of the position before it. */
function* findBadAdvice(
  block: Block,
  node: MoveNode,
  { san }: PlayedMove,
  course: CourseView,
  key: string,
): Generator<Finding> {
  const first = course.ask('advice', key);
  const there = first?.san === san && course.ask('advicePlace', key);
  if (!first || !there) return;
  const place = placeOf(node, block);
  const where = whereIs(there, place);
  yield {
    place,
    message: `${where[0]?.toUpperCase()}${where.slice(1)} ${first.name} is the advice in this position, and here it is called bad.`,
    hint: 'Take back the sign or the advice.',
    related: [{ place: there, message: `${first.name} is advised here` }],
  };
}
