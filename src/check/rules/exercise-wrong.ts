import { otherColor, sideName } from '../../chess/index.ts';
import type { Finding, Place } from '../../diagnostics/index.ts';
import type { ExerciseBlock, ExerciseLine, MoveNode } from '../../model/index.ts';
import { isBadSign } from '../../model/index.ts';
import { glyphSign } from '../../movetext/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';
import { whereIs } from '../shared/words.ts';
import { type CourseView, moveAsked } from '../view/index.ts';

export const exerciseWrong = defineCourseRule({
  id: 'exercise-wrong',
  severity: 'error',
  finds: 'An exercise whose moves are not what the course says of them.',
  documentation: `
Where the course advises a move in the position of an exercise, an \`answer\` must be that move; a good
move that is not the advice belongs to \`also\`. No move may stand in two of the lists \`answer\`, \`also\`
and \`wrong\`. Moves that cannot be played are \`move-illegal\` here as anywhere.

What a block of moves says of a move holds in exercises too:

- a move that is marked \`?\`, \`??\` or \`?!\` anywhere in the course is neither \`answer\` nor \`also\`;
- the course's advice, and a move with \`:option\`, are not \`wrong\`;
- the moves that follow an answer, or a move of \`also\`, keep to the advice of the positions that they reach.

The move under \`before\` is the other side's: in a course for White it is a move of Black's. An \`answer\` and a move
of \`also\` have no bad sign of their own.
`,
  examples: [
    {
      title: 'The answer is not the advice',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bc4\n```',
      findings: [
        {
          at: '7:12-7:15',
          message: 'The answer is 3.Bc4, but in line 2 the course advises 3.Bb5 in this position.',
          hint: 'Make 3.Bb5 the answer, and list 3.Bc4 under `also` if it is good too.',
        },
      ],
    },
    {
      title: 'The course calls the move a mistake',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n  ( 3. Nxe5?? Nxe5 )\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bb5\nalso: 3. Nxe5\n```',
      findings: [
        {
          at: '9:10-9:14',
          message: '3.Nxe5 stands under `also`, but in line 3 the course marks it ??.',
          hint: 'Take it out, or list it under `wrong`.',
        },
      ],
    },
    {
      title: 'The advice, and an alternative, are called wrong',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5\n  ( 3. Bc4 {:option[quieter]} 3... Bc5 = )\n```\n\n```exercise at="open"\nask: Which moves are no good?\nanswer: 3. Bb5\nwrong:\n  - 3. Bc4 {does not attack the knight.}\n```',
      findings: [
        {
          at: '10:8',
          message: '3.Bc4 stands under `wrong`, but in line 3 the course calls it an alternative.',
          hint: 'List it under `also`.',
        },
      ],
    },
    {
      title: 'The line leaves the advice further on',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5 a6 4. Ba4\n```\n\n```exercise at="open"\nask: What now?\nanswer: 3. Bb5 a6 4. Bxc6 dxc6\n```',
      findings: [
        {
          at: '7:22-7:26',
          message:
            'The line of this answer goes on with 4.Bxc6, but in line 2 the course advises 4.Ba4 in that position.',
          hint: 'Go on with 4.Ba4, or end the line before.',
        },
      ],
    },
    {
      title: 'One move in two lists',
      course:
        '```exercise after="1. e4 e5"\nask: What now?\nanswer:\n  - 2. Nf3\n  - 2. Nc3\nwrong: 2. Nc3 {is slow.}\n```',
      findings: [
        {
          at: '6:11-6:14',
          message: '2.Nc3 stands under `answer` already.',
          hint: 'Keep it in one of the two lists.',
        },
      ],
    },
    {
      title: 'The student’s own move comes before the question',
      course: '```exercise after="1. e4 e5" before="2. Nf3"\nask: What now?\nanswer: 2... Nc6\n```',
      findings: [
        {
          at: '1:41-1:44',
          message:
            '2.Nf3 stands under `before`, but this is a course for White: the question would be put to Black.',
          hint: 'Let the moves before it end with 2.Nf3, or begin the answer with it.',
        },
      ],
    },
    {
      title: 'An answer with a bad sign',
      course: '```exercise after="1. e4 e5"\nask: What now?\nanswer: 2. Qh5?!\n```',
      findings: [
        {
          at: '3:12-3:15',
          message: '2.Qh5 stands under `answer`, but here it is marked ?!.',
          hint: 'Take the sign away, or list it under `wrong`.',
        },
      ],
    },
    {
      title: 'A move before, several moves to find, two of them right at once',
      course:
        '```moves\n1. e4 e5 {:here[open]} 2. Nf3 Nc6 3. Bb5 a6 4. Ba4\n```\n\n```exercise at="open" before="2. Nf3"\nask: Defend the pawn.\nanswer: 2... Nc6 3. Bb5 a6 ( 3... Nf6 ) 4. Ba4\nhint:\n  - Which pieces can?\n  - Not the queen.\n```',
      side: 'black',
      findings: [],
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
      for (const list of ['answer', 'also'] as const) {
        for (const line of block[list]) {
          yield* againstSign(course, list, line);
          yield* againstLaterAdvice(course, list, line);
        }
      }
      for (const line of block.wrong) yield* wrongAgainstCourse(course, line);
      yield* beforeIsOwn(course, block);
      yield* againstAdvice(course, block);
      yield* listedTwice(block);
    }
  },
});

/** The first move of a line of an exercise, where it can be played. */
interface FirstMove {
  readonly san: string;
  /** `7...Be7`. */
  readonly name: string;
  /** `Position.key` of the exercise. */
  readonly key: string;
  readonly place: Place;
}

function firstOf(line: ExerciseLine): FirstMove | undefined {
  const [start] = line;
  const first = line[start?.children[0] ?? -1];
  if (!start?.position || !first?.move || !first.written) return undefined;
  const { place } = first.written;
  return { san: first.move.san, name: moveName(first, start), key: start.position.key, place };
}

function* beforeIsOwn({ side }: CourseView, { nodes, before }: ExerciseBlock): Generator<Finding> {
  const start = nodes[before?.parent ?? -1];
  if (!start || !before?.move || !before.written || side !== before.move.color) return;
  const name = moveName(before, start);
  yield {
    place: before.written.place,
    message: `${name} stands under \`before\`, but this is a course for ${sideName(side)}: the question would be put to ${sideName(otherColor(side))}.`,
    hint: `Let the moves before it end with ${name}, or begin the answer with it.`,
  };
}

function* againstAdvice(course: CourseView, { answer }: ExerciseBlock): Generator<Finding> {
  for (const line of answer) {
    const first = firstOf(line);
    const advice = first && course.ask('advice', first.key);
    if (!advice || first.san === advice.san) continue;
    // That it is marked bad says more.
    if (markOf(course, first) !== undefined) continue;
    const there = course.ask('advicePlace', first.key);
    if (!there) continue;
    yield {
      place: first.place,
      message: `The answer is ${first.name}, but ${whereIs(there, first.place)} the course advises ${advice.name} in this position.`,
      hint: `Make ${advice.name} the answer, and list ${first.name} under \`also\` if it is good too.`,
      related: [{ place: there, message: `${advice.name} is advised here` }],
    };
  }
}

/** The sign by which the course calls a move bad; none where it advises it elsewhere, which contradicts itself. */
function markOf(course: CourseView, { key, san }: FirstMove): string | undefined {
  const judged = course.ask('judged', moveAsked(key, san));
  if (judged?.bad === undefined || judged.advised) return undefined;
  return glyphSign(judged.bad);
}

function* againstSign(
  course: CourseView,
  list: 'answer' | 'also',
  line: ExerciseLine,
): Generator<Finding> {
  const first = firstOf(line);
  const own = line[line[0]?.children[0] ?? -1]?.glyphs.find(isBadSign);
  if (first && own !== undefined) {
    yield {
      place: first.place,
      message: `${first.name} stands under \`${list}\`, but here it is marked ${glyphSign(own)}.`,
      hint: 'Take the sign away, or list it under `wrong`.',
    };
    return;
  }
  const sign = first && markOf(course, first);
  const there = sign && course.ask('judgedPlace', moveAsked(first.key, first.san));
  if (!there) return;
  yield {
    place: first.place,
    message: `${first.name} stands under \`${list}\`, but ${whereIs(there, first.place)} the course marks it ${sign}.`,
    hint: 'Take it out, or list it under `wrong`.',
    related: [{ place: there, message: `${first.name} is marked here` }],
  };
}

function* wrongAgainstCourse(course: CourseView, line: ExerciseLine): Generator<Finding> {
  const first = firstOf(line);
  const judged = first && course.ask('judged', moveAsked(first.key, first.san));
  if (!judged || judged.bad !== undefined || !(judged.advised || judged.option)) return;
  const there = judged.advised
    ? course.ask('advicePlace', first.key)
    : course.ask('judgedPlace', moveAsked(first.key, first.san));
  if (!there) return;
  const says = judged.advised ? 'advises it' : 'calls it an alternative';
  yield {
    place: first.place,
    message: `${first.name} stands under \`wrong\`, but ${whereIs(there, first.place)} the course ${says}.`,
    hint: judged.advised ? 'Make it the answer.' : 'List it under `also`.',
    related: [{ place: there, message: `the course ${says} here` }],
  };
}

/** The first move of the student's behind the one that is asked for that is not the advice where it is played. */
function* againstLaterAdvice(
  course: CourseView,
  list: 'answer' | 'also',
  line: ExerciseLine,
): Generator<Finding> {
  const asked = line[0]?.children[0];
  for (const { node, parent } of mainLineOf(line)) {
    if (node.index === asked || !parent.position || !node.move || !node.written) continue;
    // A line may show a mistake, with its sign.
    if (node.glyphs.some(isBadSign)) return;
    const { key } = parent.position;
    const { place } = node.written;
    const advice = course.ask('advice', key);
    if (!advice || advice.san === node.move.san) continue;
    const there = course.ask('advicePlace', key);
    if (!there) return;
    const what = list === 'answer' ? 'answer' : 'move';
    yield {
      place,
      message: `The line of this ${what} goes on with ${moveName(node, parent)}, but ${whereIs(there, place)} the course advises ${advice.name} in that position.`,
      hint: `Go on with ${advice.name}, or end the line before.`,
      related: [{ place: there, message: `${advice.name} is advised here` }],
    };
    return;
  }
}

function* mainLineOf(line: ExerciseLine): Generator<{ node: MoveNode; parent: MoveNode }> {
  for (let parent = line[0]; parent; ) {
    const node: MoveNode | undefined = line[parent.children[0] ?? -1];
    if (node) yield { node, parent };
    parent = node;
  }
}

function* listedTwice({ answer, also, wrong }: ExerciseBlock): Generator<Finding> {
  const seen = new Map<string, string>();
  for (const [list, lines] of Object.entries({ answer, also, wrong })) {
    for (const line of lines) {
      const first = firstOf(line);
      if (!first) continue;
      const earlier = seen.get(first.san);
      if (!earlier) seen.set(first.san, list);
      else if (earlier !== list) {
        yield {
          place: first.place,
          message: `${first.name} stands under \`${earlier}\` already.`,
          hint: 'Keep it in one of the two lists.',
        };
      }
    }
  }
}
