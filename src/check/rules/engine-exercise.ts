import type { Position } from '../../chess/index.ts';
import type { Finding, Place } from '../../diagnostics/index.ts';
import type { Score } from '../../facts/index.ts';
import type { EngineMargins, ExerciseBlock, ExerciseLine, MoveNode } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { lossOf, nameOfMove, pawnsText, scoreText } from '../engine/engine-words.ts';
import { type JudgedMove, judgeMove } from '../engine/judge-move.ts';
import type { CourseView } from '../view/index.ts';

export const engineExercise = defineCourseRule({
  id: 'engine-exercise',
  severity: 'warning',
  byEngine: true,
  finds: 'An exercise with a weak answer, a second answer, or a good move among the wrong ones.',
  documentation: `
What an engine says of the course comes from \`linewright engine\`; without its results this rule is
silent. Nothing costs a student's trust as much as a good move that is called wrong.

- A move under \`answer\` or \`also\` is told when it loses more than the setting \`margin\` against the best
  move (0.8 pawns).
- A move under \`wrong\` is told when it is as good as the answer.
- A move that stands in none of the lists is told when it is as good as the answer, unless the answer is what
  the course advises there: then the exercise asks for the course's move, and others may be as good.

Two moves are equally good when no more than the setting \`equal\` lies between them (0.2 pawns), or when both
mate and the other does it as fast. Only the engine's list is looked at, three moves unless it was asked for
more; the moves that the exercise names are looked at in any case.
`,
  examples: [
    {
      title: 'Another move is as good',
      course:
        '```exercise fen="6k1/5ppp/8/8/8/8/5PPP/RR4K1 w - - 0 1"\nask: Mate in one.\nanswer: 1. Ra8#\n```',
      engine: { '6k1/5ppp/8/8/8/8/5PPP/RR4K1 w - -': '#1 Ra8#; #1 Rb8#; +9.00 Ra7' },
      findings: [
        {
          at: '3:12-3:16',
          message:
            '1.Rb8# is as good as the answer 1.Ra8#: for White, Example 1 at depth 20 counts mate in 1 and mate in 1.',
          hint: 'List it under `answer` or `also`, or choose a position with one answer.',
        },
      ],
    },
    {
      title: 'A weak answer, and a good move that is called wrong',
      course:
        '```exercise after="1. e4 e5 2. Nf3 f6"\nask: How does White punish it?\nanswer: 3. Bc4 {with ideas on f7}\nwrong:\n  - 3. Nxe5 {loses a piece}\n```',
      engine: { '1. e4 e5 2. Nf3 f6': '+1.90 Nxe5 Qe7; +0.85 Bc4' },
      findings: [
        {
          at: '3:12-3:15',
          message:
            'The answer 3.Bc4 is more than 0.8 pawns worse than 3.Nxe5: for White, Example 1 at depth 20 counts +0.85 against +1.90.',
          hint: 'Its line is 3.Nxe5 Qe7. Mend the exercise, or except it with `:allow[engine-exercise …]` and the reason.',
        },
        {
          at: '5:8-5:12',
          message:
            '3.Nxe5 is listed under `wrong`, and is as good as the answer 3.Bc4: for White, Example 1 at depth 20 counts +1.90 and +0.85.',
          hint: 'List it under `answer` or `also`, or choose a position with one answer.',
        },
      ],
    },
    {
      title: 'The answer is the course’s advice: others may be as good',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bb5\n```',
      engine: { '1. e4 e5 2. Nf3 Nc6': '+0.31 Bb5; +0.30 Bc4; +0.28 d4' },
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    if (!course.ask('engineRan', '')) return;
    for (const block of chapter.blocks) {
      if (block.kind !== 'exercise' || !block.position) continue;
      yield* weakMoves(course, block);
      yield* goodMoves(course, block, block.position);
    }
  },
});

interface Listed extends JudgedMove {
  readonly place: Place;
}

/** The first moves of lines that the engine can say something of. */
function judged(course: CourseView, lines: readonly ExerciseLine[]): Listed[] {
  return lines.flatMap((line) => {
    const node = firstOf(line);
    const found = node && judgeMove(course, line[0]?.position, node);
    return found && node.written ? [{ ...found, place: node.written.place }] : [];
  });
}

function* weakMoves(course: CourseView, { answer, also }: ExerciseBlock): Generator<Finding> {
  const { margin } = course.margins;
  const listed = [
    ...judged(course, answer).map((move) => ({ ...move, what: `The answer ${move.name}` })),
    ...judged(course, also).map((move) => ({ ...move, what: `${move.name}, under \`also\`,` })),
  ];
  for (const { what, place, loss, better, line, against } of listed) {
    if (loss <= margin) continue;
    yield {
      place,
      message: `${what} is more than ${pawnsText(margin)} worse than ${better}: ${against}.`,
      hint: `Its line is ${line}. Mend the exercise, or except it with \`:allow[engine-exercise …]\` and the reason.`,
    };
  }
}

function* goodMoves(
  course: CourseView,
  { answer, also, wrong }: ExerciseBlock,
  position: Position,
): Generator<Finding> {
  const [first, ...others] = judged(course, answer);
  if (first === undefined) return;
  const worst = others.reduce((a, b) => (b.loss > a.loss ? b : a), first);
  const isAsGood = (score: Score) => isEqual(score, worst.score, course.margins);
  const both = (score: Score) =>
    `${worst.counts} ${scoreText(score)} and ${scoreText(worst.score)}`;
  const hint = 'List it under `answer` or `also`, or choose a position with one answer.';
  for (const { place, name, score } of judged(course, wrong)) {
    if (!isAsGood(score)) continue;
    yield {
      place,
      message: `${name} is listed under \`wrong\`, and is as good as the answer ${worst.name}: ${both(score)}.`,
      hint,
    };
  }
  if (course.ask('advice', position.key)) return;
  const listed = new Set(
    [...answer, ...also, ...wrong].flatMap((line) => firstOf(line)?.move?.san ?? []),
  );
  for (const { moves, score } of course.ask('engine', position.key)?.lines ?? []) {
    const san = moves[0] ?? '';
    if (listed.has(san) || !isAsGood(score)) continue;
    yield {
      place: worst.place,
      message: `${nameOfMove(position, san)} is as good as the answer ${worst.name}: ${both(score)}.`,
      hint,
    };
  }
}

function isEqual(other: Score, answer: Score, { equal }: EngineMargins): boolean {
  if (answer.kind === 'mate' && answer.moves > 0) {
    return other.kind === 'mate' && other.moves > 0 && other.moves <= answer.moves;
  }
  if (other.kind === 'pawns' && answer.kind === 'pawns') {
    return other.hundredths >= answer.hundredths - 100 * equal;
  }
  return lossOf(answer, other) <= 0;
}

function firstOf(line: ExerciseLine): MoveNode | undefined {
  const first = line[0]?.children[0];
  return first === undefined ? undefined : line[first];
}
