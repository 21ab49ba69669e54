import {
  isMate,
  isStalemate,
  type Position,
  sideName,
  sideToMove,
  whyNeverFrom,
} from '../../chess/index.ts';
import { isMarkedBad, type MoveNode, type MovesBlock } from '../../model/index.ts';
import { isAssessment } from '../../movetext/index.ts';
import { linkedNames, linksElsewhere } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';
import { after } from '../shared/words.ts';
import type { CourseView } from '../view/index.ts';

export const replyUnanswered = defineCourseRule({
  id: 'reply-unanswered',
  severity: 'error',
  finds: 'A reply of the other side that the course raises and does not answer.',
  documentation: `
A reply of the other side that the course raises must be answered: by a move, by advice for the same
position elsewhere in the course (also by another order of moves), by an assessment sign, by a link
to a named position, by \`:same[…]\` or \`:later[…]\`, or by \`:end[reason]\` where the line stops on
purpose. A line that ends in mate or stalemate needs no answer, and neither does one that shows why a
move of the course's own side, marked \`?\`, \`??\` or \`?!\`, is bad.

A bad move alone is no answer. Neither is a name that leads back to the position itself, or a promise of a
position that can never come about from here, by the men and the castling rights that are left and the way
that pawns go.
`,
  examples: [
    {
      title: 'A reply is raised and left',
      course: '```moves\n1. e4 e5 (1... c5) 2. Nf3\n```',
      findings: [
        {
          at: '2:16-2:18',
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
      title: 'The refutation of a bad move of ours needs no answer, in its own block or in another',
      course:
        '```moves\n1. e4 e5 2. Nf3 (2. f3? {:here[weak]} Qh4+) 2... Nc6 3. Bb5\n```\n\n```moves from="weak"\n2... Bc5 3. Ne2 Nf6\n```',
      findings: [],
    },
    {
      title: 'Only a bad move answers',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 (3... Nf6 4. Nc3?) 4. Ba4\n```',
      findings: [
        {
          at: '2:44-2:47',
          message: 'After 3...Nf6 White has nothing but a bad move, 4.Nc3.',
          hint: 'Show the move that White should play, or an assessment sign, a link, or `:end[reason]`.',
        },
      ],
    },
    {
      title:
        'A promise of a position that cannot come from there, and a name that leads nowhere else',
      course:
        '```moves\n1. e4 e5 2. Nf3 (2. Bc4 {:option[too]} Nf6 {:later[closed]} 3. d3 d5 {:here[x] [more](pos:x)}) 2... Nc6 3. Bb5 a6 {:later[closed]}\n```\n\n```moves\n1. d4 {:option[another course]} d5 2. c4 e6 {:here[closed]} 3. Nc3\n```',
      findings: [
        {
          at: '2:67',
          message: 'The line stops after 3...d5, and `x` leads back to this position.',
        },
        {
          at: '2:112',
          message:
            'The line stops after 3...a6, and `closed` cannot come about from there: no white pawn can come to e2.',
          hint: 'Correct the name, or answer the reply.',
        },
      ],
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
    const mover = sideName(side);
    for (const block of chapter.blocks) {
      // Where movetext could not be read, nobody knows where its lines were meant to end.
      if (block.kind !== 'moves' || block.unread) continue;
      if (block.from && course.ask('aside', block.from.name) === 'bad') continue;
      for (const node of block.nodes) {
        const { position } = node;
        if (!position || sideToMove(position) !== side) continue;
        if (refutations(block, side).has(node.index) || isSettled(node)) continue;
        const parent = block.nodes[node.parent ?? -1];
        const children = node.children.flatMap((index) => block.nodes[index] ?? []);
        const bad = children.find((child) => child.written && child.move);
        if (bad?.written) {
          if (!children.every(isMarkedBad) || namesBehind(node).length > 0) continue;
          if (course.ask('advice', position.key) || course.ask('answered', position.key)) continue;
          yield {
            place: bad.written.place,
            message: `${after(node, parent)} ${mover} has nothing but a bad move, ${moveName(bad, node)}.`,
            hint: `Show the move that ${mover} should play, or an assessment sign, a link, or \`:end[reason]\`.`,
          };
          continue;
        }
        if (children.length > 0 || !node.written) continue;
        if (isMate(position) || isStalemate(position)) continue;
        const open = whyOpen(node, position, course);
        if (!open || course.ask('advice', position.key)) continue;
        yield {
          place: node.written.place,
          message: `The line stops after ${moveName(node, parent)}${open.why ?? ` with ${mover} to move, and the course has no answer`}.`,
          hint: open.why
            ? 'Correct the name, or answer the reply.'
            : 'Add the answer, a link such as `[here](pos:…)`, an assessment sign, or `:end[reason]`.',
        };
      }
    }
  },
});

/** Why the names behind a line's last move do not answer it; absent where one of them does. */
function whyOpen(
  node: MoveNode,
  position: Position,
  course: CourseView,
): { readonly why?: string } | undefined {
  const names = namesBehind(node);
  if (names.length === 0) return linksElsewhere(node) ? undefined : {};
  if (course.ask('circular', position.key)) {
    return { why: `, and \`${names[0]}\` leads back to this position` };
  }
  const promised = node.statements.flatMap(({ name, argument }) =>
    name === 'later' ? [argument] : [],
  );
  if (promised.length < names.length) return undefined;
  const reasons = promised.map((name) => {
    const there = course.ask('name', name);
    return there ? whyNeverFrom(position, there) : undefined;
  });
  const [reason] = reasons;
  if (!reason || !reasons.every(Boolean)) return undefined;
  return { why: `, and \`${promised[0]}\` cannot come about from there: ${reason}` };
}

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

/** Whether a verdict or the author's word closes the line there. */
function isSettled({ glyphs, statements }: MoveNode): boolean {
  return glyphs.some(isAssessment) || statements.some(({ name }) => name === 'end');
}

/** The names that send a reader on from a move. */
function namesBehind(node: MoveNode): string[] {
  const said = node.statements.flatMap(({ name, argument }) =>
    name === 'same' || name === 'later' ? [argument] : [],
  );
  return [...said, ...linkedNames(node)];
}
