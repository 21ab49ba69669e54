import { textNodes } from '../../model/index.ts';
import { siblingAsked } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';

export const shelfLink = defineCourseRule({
  id: 'shelf-link',
  severity: 'warning',
  finds: 'A link into another course, in a course that stands on no shelf.',
  documentation: `
\`[text](pos:course/name)\` leads into another course of the same [shelf](07-several-courses.md). No \`shelf.yaml\` in a
folder above names this course, so nothing is known of the other one: readers see the words without a link.
`,
  examples: [
    {
      title: 'There is no shelf',
      course: '```moves\n1. e4 e5\n```\n\nAs in [the Slav](pos:slav/tabiya).',
      side: 'both',
      findings: [
        {
          at: '5:22-5:33',
          message:
            'This leads into the course `slav`, and no shelf.yaml above names this course: it is shown without a link.',
          hint: 'Name both courses in a shelf.yaml, or link to an address on the web.',
        },
      ],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const node of textNodes(chapter, 'courseLink')) {
      if (course.ask('sibling', siblingAsked(node))?.is !== 'alone') continue;
      yield {
        place: { file: chapter.file, ...node.labelRange },
        message: `This leads into the course \`${node.course}\`, and no shelf.yaml above names this course: it is shown without a link.`,
        hint: 'Name both courses in a shelf.yaml, or link to an address on the web.',
      };
    }
  },
});
