import { isDay } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const judgementDate = defineCourseRule({
  id: 'judgement-date',
  severity: 'warning',
  finds: 'A judgement whose date is none, or lies in the future.',
  documentation: `
\`:judge[2026-11-01 The knight is better than the bishop.]\` says when its author thought so: the date is the
first word, as year, month and day. It is not shown to readers. At a new edition, judgements that are older than
the edition before are asked again, for which the date must be right.
`,
  examples: [
    {
      title: 'Months and days that no calendar has',
      course:
        '```moves\n1. e4 e5 {:judge[2025-13-01 The centre is equal.]} 2. Nf3 {:judge[1.11.2025 White is freer.]}\n```',
      findings: [
        {
          at: '2:18-2:28',
          message: '`2025-13-01` is no date.',
          hint: 'Write year, month and day, such as `2025-11-01`, or no date at all.',
        },
        { at: '2:67-2:76', message: '`1.11.2025` is no date.' },
      ],
    },
    {
      title: 'A slip in the year',
      course: '```moves\n1. e4 e5 {:judge[2925-11-01 The centre is equal.]}\n```',
      findings: [
        {
          at: '2:18',
          message: 'This judgement is dated 2925-11-01, which lies in the future.',
          hint: 'Write the day on which you judged so.',
        },
      ],
    },
    {
      title: 'With a date and without',
      course:
        '```moves\n1. e4 e5 {:judge[2025-11-01 The centre is equal.]} 2. Nf3 {:judge[1-0 is the usual result here.]}\n```',
      findings: [],
    },
  ],
  *inCourse({ course }) {
    // A day of slack: authors live east and west of the machine that checks.
    const tomorrow = new Date(Date.now() + 86_400_000).toISOString().slice(0, 10);
    for (const { date, place } of course.ask('datedJudgements', '')) {
      if (!isDay(date)) {
        yield {
          place,
          message: `\`${date}\` is no date.`,
          hint: 'Write year, month and day, such as `2025-11-01`, or no date at all.',
        };
      } else if (date > tomorrow) {
        yield {
          place,
          message: `This judgement is dated ${date}, which lies in the future.`,
          hint: 'Write the day on which you judged so.',
        };
      }
    }
  },
});
