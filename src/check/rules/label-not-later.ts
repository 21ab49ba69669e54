import { nameUses } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';

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
          at: '2:25-2:37',
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
  *inChapter({ chapter, course }) {
    for (const { name, place, by } of nameUses(chapter)) {
      if (by !== 'later' || course.ask('name', name) === undefined) continue;
      const given = course.ask('namePlace', name)?.place;
      if (!given) continue;
      const isOwn = given.file === place.file;
      const isLater = isOwn
        ? given.start.offset > place.start.offset
        : course.ask('order', given.file) > course.ask('order', place.file);
      if (isLater) continue;
      yield {
        place,
        message: `The position \`${name}\` comes earlier, ${isOwn ? 'in' : `in ${given.file},`} line ${given.start.line}, not later.`,
        hint: `Write a link instead: \`[…](pos:${name})\`.`,
        related: [{ place: given, message: `\`${name}\` stands here` }],
      };
    }
  },
});
