import type { Finding } from '../../diagnostics/index.ts';
import type { ExerciseBlock, ExerciseLine, MoveNode } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';
import type { CourseView } from '../view/index.ts';
import { whereIs } from '../words.ts';

export const exerciseWrong = defineCourseRule({
  id: 'exercise-wrong',
  severity: 'error',
  finds: 'An exercise whose answer is not what the course advises.',
  documentation: `
Where the course advises a move in the position of an exercise, an \`answer\` must be that move; a good
move that is not the advice belongs to \`also\`. No move may stand in two of the lists \`answer\`, \`also\`
and \`wrong\`. Moves that cannot be played are \`move-illegal\` here as anywhere.
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
      title: 'A sound exercise',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bb5 {pins nothing yet} a6 4. Ba4\nalso: 3. Bc4 {is another course}\nwrong: 3. h4\nhint: Ask the knight.\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'exercise' || !block.position) continue;
      yield* againstAdvice(course, block);
      yield* listedTwice(block);
    }
  },
});

function* againstAdvice(
  course: CourseView,
  { position, answer }: ExerciseBlock,
): Generator<Finding> {
  const advice = position && course.ask('advice', position.key);
  if (!advice) return;
  for (const line of answer) {
    const first = firstOf(line);
    if (!first?.move || !first.written || first.move.san === advice.san) continue;
    const there = course.ask('advicePlace', position.key);
    if (!there) continue;
    const name = moveName(first, line[0]);
    yield {
      place: first.written.place,
      message: `The answer is ${name}, but ${whereIs(there, first.written.place)} the course advises ${advice.name} in this position.`,
      hint: `Make ${advice.name} the answer, and list ${name} under \`also\` if it is good too.`,
      related: [{ place: there, message: `${advice.name} is advised here` }],
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
