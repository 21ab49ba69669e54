import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../problems-of.ts';

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
          start: '1:1',
          end: '1:13',
          message:
            'This line of the engine’s results is not read: it is a mark of a merge that git left open.',
          hint: 'Take the line out, and let `linewright engine` look at the position again.',
        },
      ],
    },
  ],
  *inCourse(course) {
    yield* problemsOf('facts-unreadable', course);
  },
});
