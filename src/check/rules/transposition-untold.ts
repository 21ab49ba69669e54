import { defineCourseRule } from '../course-rule.ts';
import { whereIs } from '../shared/words.ts';

export const transpositionUntold = defineCourseRule({
  id: 'transposition-untold',
  severity: 'error',
  finds: 'Two move orders that meet in one position, and the text does not say so.',
  documentation: `
Where lines meet, the student should be told: either place says \`:same[name]\`, or links to a name on
that position, also up to two moves later, or in the text right below the block. A beginning that blocks share is no transposition, and neither is a position that
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
          at: '6:16-6:18',
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
      title: 'Told a move later, told by a link below the block',
      course:
        '```moves\n1. d4 d5 2. c4 e6 3. Nc3 {:here[main]} Nf6\n```\n\n```moves\n1. c4 e6 2. d4 d5 3. Nc3 {:same[main]}\n```\n\n```moves\n1. e4 c5 2. Nf3 {:here[open]} e6 3. d4\n```\n\n```moves\n1. Nf3 c5 2. e4 e6 3. c3\n```\n\nAfter two moves this is [the open game](pos:open).\n\n```moves\n1. c4 e6 2. Nc3 d5 3. d4\n```\n\nWe know it: :same[main].',
      side: 'both',
      findings: [],
    },
    {
      title: 'A position that comes back in a line of two blocks',
      course:
        '```moves\n1. d4 d5 2. Nf3 Nf6 {:here[out]}\n```\n\n```moves from="out"\n3. Ng1 Ng8 4. c4 e6\n```',
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
  *inChapter({ chapter, course }) {
    const seen = new Set<string>();
    for (const block of chapter.blocks) {
      for (const { position } of block.kind === 'moves' ? block.nodes : []) {
        if (!position || seen.has(position.key)) continue;
        seen.add(position.key);
        for (const { here, known } of course.ask('untold', position.key)) {
          if (here.chapter !== chapter.file) continue;
          const { place } = here;
          yield {
            place,
            message: `After ${here.name} the position is the one after ${known.name} ${whereIs(known.place, place)}, and neither place says so.`,
            hint: 'Name the position there with `:here[…]` and write `:same[…]` or a link here.',
            related: [{ place: known.place, message: 'the same position stands here' }],
          };
        }
      }
    }
  },
});
