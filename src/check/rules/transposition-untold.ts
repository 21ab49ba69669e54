import type { Course, GraphPosition, MoveNode } from '../../model/index.ts';
import { comingBack } from '../coming-back.ts';
import { defineCourseRule } from '../course-rule.ts';
import { moveName } from '../move-name.ts';
import {
  linkedLabels,
  type Occurrence,
  occurrenceAt,
  placeOf,
  positionOfLabel,
  whereIs,
} from '../occurrences.ts';

export const transpositionUntold = defineCourseRule({
  id: 'transposition-untold',
  severity: 'error',
  finds: 'Two move orders that meet in one position, and the text does not say so.',
  documentation: `
Where lines meet, the student should be told: either place says \`:same[name]\`, or links to a name on
that position. A beginning that blocks share is no transposition, and neither is a position that
comes back within its own line. A meeting is told once, at its first position; what follows it in
both lines is the same line.
`,
  examples: [
    {
      title: 'Two orders meet',
      course: '```moves\n1. d4 d5 2. c4 e6 3. Nc3\n```\n\n```moves\n1. c4 e6 2. d4 d5 3. Nc3\n```',
      side: 'both',
      findings: [
        {
          start: '6:16',
          end: '6:18',
          message:
            'After 2...d5 the position is the one after 2...e6 in line 2, and neither place says so.',
          hint: 'Name the position there with `:here[…]` and write `:same[…]` or a link here.',
        },
      ],
    },
    {
      title: 'Told by `:same`, told by a link',
      course:
        '```moves\n1. d4 d5 2. c4 e6 {:here[qgd]} 3. Nc3\n```\n\n```moves\n1. c4 e6 2. d4 d5 {:same[qgd]}\n```\n\n```moves\n1. e4 c5 2. Nf3 {:here[open]} e6\n```\n\n```moves\n1. Nf3 c5 2. e4 {We know [this](pos:open).}\n```',
      side: 'both',
      findings: [],
    },
    {
      title: 'A shared beginning, and a repetition in one line',
      course: '```moves\n1. Nf3 Nf6 2. Ng1 Ng8 3. e4\n```\n\n```moves\n1. Nf3 Nf6 2. g3\n```',
      side: 'both',
      findings: [],
    },
  ],
  *find(course) {
    for (const position of Object.values(course.graph)) {
      if (position.at.length < 2) continue;
      const untold = waysTo(position, course).filter(
        (way) => !way.some(({ node }) => tells(node, position, course)),
      );
      const [first, ...others] = untold;
      const known = first?.[0];
      if (!known) continue;
      for (const way of others) {
        const [here] = way;
        if (!here) continue;
        const place = placeOf(here);
        const there = placeOf(known);
        yield {
          place,
          message: `After ${moveName(here.node, here.parent)} the position is the one after ${moveName(known.node, known.parent)} ${whereIs(there, place)}, and neither place says so.`,
          hint: 'Name the position there with `:here[…]` and write `:same[…]` or a link here.',
          related: [{ place: there, message: 'the same position stands here' }],
        };
      }
    }
  },
});

/** The places of a position, grouped by the position before it: each group is one way to it. */
function waysTo(position: GraphPosition, course: Course): Occurrence[][] {
  const ways = new Map<string, Occurrence[]>();
  for (const ref of position.at) {
    const here = occurrenceAt(course, ref);
    const before = here.parent?.position?.key;
    // The start of a block is no way: it is a named position, or stands for itself. Neither is a
    // position that has stood earlier in its own line.
    if (before === undefined || comingBack(here.block).has(ref.node)) continue;
    const way = ways.get(before);
    if (way) way.push(here);
    else ways.set(before, [here]);
  }
  return [...ways.values()];
}

function tells(node: MoveNode, position: GraphPosition, course: Course): boolean {
  const named = (name: string) => positionOfLabel(course, name)?.key === position.key;
  return (
    node.statements.some(({ name, argument }) => name === 'same' && named(argument)) ||
    linkedLabels(node).some(named)
  );
}
