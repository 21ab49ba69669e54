import { defineCourseRule } from '../course-rule.ts';
import { labelUses } from '../label-uses.ts';

export const labelNotLater = defineCourseRule({
  id: 'label-not-later',
  severity: 'error',
  finds: 'A promise “we come to this later” for something that stands earlier.',
  documentation: `
\`:later[name]\` promises the reader that the named position comes later in the course. If it stands
before the promise, the chapters were moved: write a link, \`[text](pos:name)\`, instead.
`,
  examples: [
    {
      title: 'The promise stands behind what it promises',
      course: '```moves\n1. e4 {:here[king]} e5 {:later[king]}\n```',
      side: 'both',
      findings: [
        {
          start: '2:25',
          end: '2:37',
          message: 'The position `king` comes earlier, in line 2, not later.',
          hint: 'Write a link instead: `[…](pos:king)`.',
        },
      ],
    },
    {
      title: 'A promise that is kept',
      course: '```moves\n1. e4 {:later[queen]} e5\n```\n\n```moves\n1. d4 {:here[queen]} d5\n```',
      side: 'both',
      findings: [],
    },
  ],
  *find(course) {
    const order = new Map(course.chapters.map(({ file, index }) => [file, index]));
    for (const { name, place, by } of labelUses(course)) {
      const label = course.labels[name];
      if (by !== 'later' || !label) continue;
      const chapters = (order.get(label.place.file) ?? 0) - (order.get(place.file) ?? 0);
      if (chapters > 0 || (chapters === 0 && label.place.start.offset > place.start.offset))
        continue;
      const where = `${label.place.file === place.file ? 'in' : `in ${label.place.file},`} line ${label.place.start.line}`;
      yield {
        place,
        message: `The position \`${name}\` comes earlier, ${where}, not later.`,
        hint: `Write a link instead: \`[…](pos:${name})\`.`,
        related: [{ place: label.place, message: `\`${name}\` stands here` }],
      };
    }
  },
});
