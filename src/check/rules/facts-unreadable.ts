import { legalMoves, numberedSan } from '../../chess/index.ts';
import { movesAndStarts } from '../../model/index.ts';
import { placeOf } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const factsUnreadable = defineCourseRule({
  id: 'facts-unreadable',
  severity: 'warning',
  finds: 'A line of the kept results of an engine that cannot be read.',
  documentation: `
\`linewright engine\` keeps its results in \`facts/engine.tsv\`, a line a position. A line that was damaged, as by
a merge, is left out; the others count. Take it out, and the next run looks at the position again.
`,
  examples: [
    {
      title: 'A merge that was left open',
      course: {
        'chapters/1.md': '```moves\n1. e4 e5 2. Nf3\n```',
        'facts/engine.tsv':
          '<<<<<<< HEAD\nrnbqkbnr/pppppppp/8/8/8/8/PPPPPPPP/RNBQKBNR w KQkq -\tExample 1\tdepth 20\t20\t+0.30 e4\n',
      },
      findings: [
        {
          file: 'facts/engine.tsv',
          at: '1:1-1:13',
          message:
            'This line of the engine’s results is not read: it is a mark of a merge that git left open.',
          hint: 'Take the line out, and let `linewright engine` look at the position again.',
        },
      ],
    },
    {
      title: 'A line of another position',
      course: '```moves\n1. e4 e5 2. Nf3\n```',
      engine: { '1. e4 e5': '+0.30 Nf3; +0.20 Nc6' },
      findings: [
        {
          at: '2:7-2:9',
          message: 'The kept results of an engine name Nc6 after 1...e5, and it cannot be played.',
          hint: 'Take the line of this position out of the results, and let `linewright engine` look at it again.',
        },
      ],
    },
  ],
  *inChapter({ chapter, course }) {
    if (!course.ask('engineRan', '')) return;
    const seen = new Set<string>();
    for (const { block, node } of movesAndStarts(chapter)) {
      const { position } = node;
      if (!position || seen.has(position.key)) continue;
      seen.add(position.key);
      const fact = course.ask('engine', position.key);
      if (!fact) continue;
      const legal = legalMoves(position);
      const wrong = fact.lines
        .map(({ moves }) => moves[0] ?? '')
        .find((san) => !legal.includes(san));
      if (wrong === undefined) continue;
      const where = node.move ? `after ${numberedSan(node.move)}` : 'at the start';
      yield {
        place: placeOf(node, block),
        message: `The kept results of an engine name ${wrong} ${where}, and it cannot be played.`,
        hint: 'Take the line of this position out of the results, and let `linewright engine` look at it again.',
      };
    }
  },
  *inCourse(course) {
    yield* problemsOf('facts-unreadable', course);
  },
});
