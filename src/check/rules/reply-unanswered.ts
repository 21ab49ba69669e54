import { isMate, isStalemate, sideToMove } from '../../chess/index.ts';
import { isMarkedBad, type MoveNode, type MovesBlock, movesOf } from '../../model/index.ts';
import { isAssessment } from '../../movetext/index.ts';
import { linkedNames } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';

export const replyUnanswered = defineCourseRule({
  id: 'reply-unanswered',
  severity: 'error',
  finds: 'A line that stops with the course’s side to move, and no answer.',
  documentation: `
A reply of the other side that the course raises must be answered: by a move, by advice for the same
position elsewhere in the course (also by another order of moves), by an assessment sign, by a link
to a named position, by \`:same[…]\` or \`:later[…]\`, or by \`:end[reason]\` where the line stops on
purpose. A line that ends in mate or stalemate needs no answer, and neither does one that shows why a
move of the course's own side, marked \`?\`, \`??\` or \`?!\`, is bad.
`,
  examples: [
    {
      title: 'A reply is raised and left',
      course: '```moves\n1. e4 e5 (1... c5) 2. Nf3\n```',
      findings: [
        {
          start: '2:16',
          end: '2:18',
          message: 'The line stops after 1...c5 with White to move, and the course has no answer.',
          hint: 'Add the answer, a link such as `[here](pos:…)`, an assessment sign, or `:end[reason]`.',
        },
      ],
    },
    {
      title: 'Answered elsewhere, by a sign, on purpose',
      course:
        '```moves\n1. e4 e5 (1... c5) (1... e6 =) (1... c6 {:end[a course of its own]}) 2. Nf3\n```\n\n```moves\n1. e4 c5 2. Nf3\n```',
      findings: [],
    },
    {
      title: 'The refutation of a bad move of ours needs no answer',
      course: '```moves\n1. e4 e5 2. Nf3 (2. f3? Qh4+) 2... Nc6 3. Bb5\n```',
      findings: [],
    },
    {
      title: 'A course for both sides gives no answers',
      course: '```moves\n1. e4 e5\n```',
      side: 'both',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    const { side } = course;
    if (side === 'both') return;
    for (const { block, node, parent } of movesOf(chapter)) {
      if (block.kind !== 'moves' || node.children.length > 0) continue;
      const { position } = node;
      if (!position || !node.written || sideToMove(position) !== side) continue;
      if (isClosed(node) || refutations(block, side).has(node.index)) continue;
      if (isMate(position) || isStalemate(position)) continue;
      // Where movetext could not be read, nobody knows where its lines were meant to end.
      if (block.unread || course.ask('advice', position.key)) continue;
      const mover = side === 'white' ? 'White' : 'Black';
      yield {
        place: node.written.place,
        message: `The line stops after ${moveName(node, parent)} with ${mover} to move, and the course has no answer.`,
        hint: 'Add the answer, a link such as `[here](pos:…)`, an assessment sign, or `:end[reason]`.',
      };
    }
  },
});

const refuted = new WeakMap<MovesBlock, ReadonlySet<number>>();

/** The nodes of lines that go through a move of the course's side that is marked as bad. */
function refutations(block: MovesBlock, side: 'white' | 'black'): ReadonlySet<number> {
  const known = refuted.get(block);
  if (known) return known;
  const found = new Set<number>();
  // Parents stand before their children.
  for (const node of block.nodes) {
    const isBad = node.move?.color === side && isMarkedBad(node);
    if (isBad || (node.parent !== undefined && found.has(node.parent))) found.add(node.index);
  }
  refuted.set(block, found);
  return found;
}

function isClosed(node: MoveNode): boolean {
  return (
    node.glyphs.some(isAssessment) ||
    node.statements.some(({ name }) => name === 'same' || name === 'later' || name === 'end') ||
    linkedNames(node).length > 0
  );
}
