import type { Finding } from '../../diagnostics/index.ts';
import type { Course, ExerciseBlock, ExerciseLine, MoveNode } from '../../model/index.ts';
import { adviceOf } from '../advice.ts';
import { defineCourseRule } from '../course-rule.ts';
import { meantHint } from '../move-fault-rule.ts';
import { moveName } from '../move-name.ts';
import { occurrenceAt, placeOf, whereIs } from '../occurrences.ts';

export const exerciseWrong = defineCourseRule({
  id: 'exercise-wrong',
  severity: 'error',
  finds: 'An exercise whose answer cannot be played, or is not what the course advises.',
  documentation: `
Every move of an exercise is played from its position: the lines of \`answer\`, \`also\` and \`wrong\`. Where
the course advises a move in that position, an answer must be that move; a good move that is not the
advice belongs to \`also\`. No move may stand in two of the three lists.
`,
  examples: [
    {
      title: 'The answer is not the advice',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bc4\n```',
      findings: [
        {
          start: '7:12',
          end: '7:15',
          message: 'The answer is 3.Bc4, but in line 2 the course advises 3.Bb5 in this position.',
          hint: 'Make 3.Bb5 the answer, and list 3.Bc4 under `also` if it is good too.',
        },
      ],
    },
    {
      title: 'An answer that cannot be played',
      course:
        '```exercise fen="4k3/8/8/8/8/8/4P3/4K3 w - - 0 1"\nask: Forward!\nanswer: e5\nwrong: Kd2\n```',
      findings: [
        {
          start: '3:9',
          end: '3:11',
          message: '1.e5 cannot be played: the pawn on e2 cannot go as far as e5 in one move.',
          hint: 'Did you mean e3 or e4?',
        },
      ],
    },
    {
      title: 'A sound exercise',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bb5 {pins nothing yet} a6 4. Ba4\nalso: 3. Bc4 {is another course}\nwrong: 3. h4\nhint: Ask the knight.\n```',
      findings: [],
    },
  ],
  *find(course) {
    for (const chapter of course.chapters) {
      for (const block of chapter.blocks) {
        if (block.kind !== 'exercise' || !block.position) continue;
        yield* faults(block);
        yield* againstAdvice(course, block);
        yield* listedTwice(block);
      }
    }
  },
});

function* faults({ answer, also, wrong }: ExerciseBlock): Generator<Finding> {
  for (const line of [...answer, ...also, ...wrong]) {
    for (const node of line) {
      if (!node.fault || node.fault.kind === 'after-fault' || !node.written) continue;
      const parent = node.parent === undefined ? undefined : line[node.parent];
      const hint = meantHint(node.fault.meant);
      yield {
        place: node.written.place,
        message: `${moveName(node, parent)} cannot be played: ${node.fault.reason}.`,
        ...(hint === undefined ? {} : { hint }),
      };
    }
  }
}

function* againstAdvice(course: Course, { position, answer }: ExerciseBlock): Generator<Finding> {
  const [advice] = (position && adviceOf(course).get(position.key)) ?? [];
  if (!advice) return;
  const advised = occurrenceAt(course, advice.ref);
  for (const line of answer) {
    const first = firstOf(line);
    if (!first?.move || !first.written || first.move.san === advice.san) continue;
    const there = placeOf(advised);
    const right = moveName(advised.node, advised.parent);
    const name = moveName(first, line[0]);
    yield {
      place: first.written.place,
      message: `The answer is ${name}, but ${whereIs(there, first.written.place)} the course advises ${right} in this position.`,
      hint: `Make ${right} the answer, and list ${name} under \`also\` if it is good too.`,
      related: [{ place: there, message: `${right} is advised here` }],
    };
  }
}

function* listedTwice({ answer, also, wrong }: ExerciseBlock): Generator<Finding> {
  const seen = new Map<string, { list: string; node: MoveNode }>();
  for (const [list, lines] of Object.entries({ answer, also, wrong })) {
    for (const line of lines) {
      const first = firstOf(line);
      if (!first?.move || !first.written) continue;
      const earlier = seen.get(first.move.san);
      if (!earlier) seen.set(first.move.san, { list, node: first });
      else if (earlier.list !== list) {
        yield {
          place: first.written.place,
          message: `${moveName(first, line[0])} stands under \`${earlier.list}\` already.`,
          hint: 'Keep it in one of the two lists.',
        };
      }
    }
  }
}

function firstOf(line: ExerciseLine): MoveNode | undefined {
  const first = line[0]?.children[0];
  return first === undefined ? undefined : line[first];
}
