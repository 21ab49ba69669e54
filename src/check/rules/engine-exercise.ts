import { type Position, sideToMove } from '../../chess/index.ts';
import type { Finding } from '../../diagnostics/index.ts';
import { type EngineFact, type Score, scoreOfMove } from '../../facts/index.ts';
import type { EngineMargins, ExerciseBlock, ExerciseLine, MoveNode } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import {
  engineOf,
  lineText,
  lossOf,
  nameOfMove,
  pawnsText,
  scoreText,
  sideText,
} from '../engine-words.ts';
import type { CourseView } from '../view/index.ts';

export const engineExercise = defineCourseRule({
  id: 'engine-exercise',
  severity: 'warning',
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
          start: '3:12',
          end: '3:16',
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
          start: '3:12',
          end: '3:15',
          message:
            'The answer 3.Bc4 is more than 0.8 pawns worse than 3.Nxe5: for White, Example 1 at depth 20 counts +0.85 against +1.90.',
          hint: 'Its line is 3.Nxe5 Qe7. Mend the exercise, or except it with `:allow[engine-exercise …]` and the reason.',
        },
        {
          start: '5:8',
          end: '5:12',
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
      const here = course.ask('engine', block.position.key);
      if (here?.lines[0]) yield* judge(course, block, { position: block.position, here });
    }
  },
});

interface Board {
  readonly position: Position;
  readonly here: EngineFact;
}

interface JudgedMove {
  readonly node: MoveNode;
  readonly san: string;
  readonly name: string;
  readonly score: Score;
}

function* judge(
  course: CourseView,
  { answer, also, wrong }: ExerciseBlock,
  board: Board,
): Generator<Finding> {
  const { position, here } = board;
  const { margins } = course;
  const [best] = here.lines;
  if (!best) return;
  const judged = (lines: readonly ExerciseLine[]) =>
    lines.flatMap((line) => judgeMove(course, line, board) ?? []);
  const counts = `for ${sideText(sideToMove(position))}, ${engineOf(here)} counts`;
  const answers = judged(answer);
  const goods = [
    ...answers.map((move) => ({ ...move, list: 'The answer' })),
    ...judged(also).map((move) => ({ ...move, list: 'The move under `also`,' })),
  ];
  for (const { node, name, score, list } of goods) {
    if (!node.written || lossOf(best.score, score) <= margins.margin) continue;
    yield {
      place: node.written.place,
      message: `${list} ${name}${list.endsWith(',') ? ',' : ''} is more than ${pawnsText(margins.margin)} worse than ${nameOfMove(position, best.moves[0] ?? '')}: ${counts} ${scoreText(score)} against ${scoreText(best.score)}.`,
      hint: `Its line is ${lineText(position, best)}. Mend the exercise, or except it with \`:allow[engine-exercise …]\` and the reason.`,
    };
  }
  const worst = answers.reduce<JudgedMove | undefined>(
    (a, b) => (a && lossOf(a.score, b.score) <= 0 ? a : b),
    undefined,
  );
  if (!worst?.node.written) return;
  const hint = 'List it under `answer` or `also`, or choose a position with one answer.';
  for (const { node, name, score } of judged(wrong)) {
    if (!node.written || !isAsGood(score, worst.score, margins)) continue;
    yield {
      place: node.written.place,
      message: `${name} is listed under \`wrong\`, and is as good as the answer ${worst.name}: ${counts} ${scoreText(score)} and ${scoreText(worst.score)}.`,
      hint,
    };
  }
  if (course.ask('advice', position.key)) return;
  const listed = new Set(
    [...answer, ...also, ...wrong].flatMap((line) => firstOf(line)?.move?.san ?? []),
  );
  for (const { moves, score } of here.lines) {
    const san = moves[0] ?? '';
    if (listed.has(san) || !isAsGood(score, worst.score, margins)) continue;
    yield {
      place: worst.node.written.place,
      message: `${nameOfMove(position, san)} is as good as the answer ${worst.name}: ${counts} ${scoreText(score)} and ${scoreText(worst.score)}.`,
      hint,
    };
  }
}

function isAsGood(other: Score, answer: Score, { equal }: EngineMargins): boolean {
  if (answer.kind === 'mate' && answer.moves > 0) {
    return other.kind === 'mate' && other.moves > 0 && other.moves <= answer.moves;
  }
  if (other.kind === 'pawns' && answer.kind === 'pawns') {
    return other.hundredths >= answer.hundredths - 100 * equal;
  }
  return lossOf(answer, other) <= 0;
}

function judgeMove(
  course: CourseView,
  line: ExerciseLine,
  { position, here }: Board,
): JudgedMove | undefined {
  const node = firstOf(line);
  if (!node?.move || !node.position) return undefined;
  const { san } = node.move;
  const after = course.ask('engine', node.position.key);
  const score = scoreOfMove({ san, to: node.position }, { here, after });
  return score && { node, san, name: nameOfMove(position, san), score };
}

function firstOf(line: ExerciseLine): MoveNode | undefined {
  const first = line[0]?.children[0];
  return first === undefined ? undefined : line[first];
}
