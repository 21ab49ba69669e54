import { sideName } from '../../chess/index.ts';
import type { DiagramBlock, ExerciseBlock } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../shared/move-name.ts';
import { whereIs } from '../shared/words.ts';
import { type CourseView, moveAsked } from '../view/index.ts';

export const diagramAdvice = defineCourseRule({
  id: 'diagram-advice',
  severity: 'warning',
  finds: 'Moves under `after` that leave the advice of the course.',
  documentation: `
A diagram or an exercise with \`after="…"\` shows a position as one that comes about in this course. If its
moves give the course's side another move than the advice, and no block of moves has that move, a student is
shown a position that he is nowhere told how to reach. A move that some block has, as an alternative or as a
mistake, is explained there and may be shown.
`,
  examples: [
    {
      title: 'The course plays another move',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n```\n\n```diagram after="1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5"\ncaption: The bishop looks at f7.\n```',
      findings: [
        {
          at: '5:42-5:45',
          message:
            'This diagram gives White the move 3.Bc4, but in line 2 the course advises 3.Bb5 in that position.',
          hint: 'Correct the moves, or show 3.Bc4 in a block of moves and say there what you think of it.',
        },
      ],
    },
    {
      title: 'A move that the course knows and does not advise',
      course:
        '```moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5\n  ( 3. Bc4 {:option[quieter]} 3... Bc5 = )\n```\n\n```diagram after="1. e4 e5 2. Nf3 Nc6 3. Bc4 Bc5 4. c3"\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const block of chapter.blocks) {
      if (block.kind !== 'diagram' && block.kind !== 'exercise') continue;
      const left = firstLeaving(block, course);
      if (!left) continue;
      const { move, place, advice, there, side } = left;
      yield {
        place,
        message: `This ${block.kind} gives ${side} the move ${move}, but ${whereIs(there, place)} the course advises ${advice} in that position.`,
        hint: `Correct the moves, or show ${move} in a block of moves and say there what you think of it.`,
        related: [{ place: there, message: `${advice} is advised here` }],
      };
    }
  },
});

/** The first move that is not the advice of its position, and that the course has not. */
function firstLeaving({ nodes }: DiagramBlock | ExerciseBlock, course: CourseView) {
  for (const node of nodes) {
    const parent = node.parent === undefined ? undefined : nodes[node.parent];
    if (!parent?.position || !node.move || !node.written) continue;
    const { key } = parent.position;
    const advice = course.ask('advice', key);
    if (!advice || advice.san === node.move.san) continue;
    if (course.ask('judged', moveAsked(key, node.move.san))) return undefined;
    const there = course.ask('advicePlace', key);
    if (!there) return undefined;
    return {
      move: moveName(node, parent),
      place: node.written.place,
      advice: advice.name,
      there,
      side: sideName(node.move.color),
    };
  }
  return undefined;
}
