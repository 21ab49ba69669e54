import { textNodes } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { linkFault } from '../shared/link-fault.ts';

export const linkUnknown = defineCourseRule({
  id: 'link-unknown',
  severity: 'warning',
  finds: 'A link to a heading or a position that its chapter does not have.',
  documentation: `
What follows the \`#\` of a link is a heading: its words in small letters, joined by hyphens. The name of a
position may stand there too. A link whose \`#…\` names nothing leads to the top of the chapter.
`,
  examples: [
    {
      title: 'A heading with other words',
      course: {
        'chapters/1.md': 'On [marks](2.md#mark-and-arrows) we come later.',
        'chapters/2.md':
          '---\ntitle: Boards\n---\n\n## Marks and arrows\n\nSee [above](#marks-and-arrows).',
      },
      findings: [
        {
          at: '1:16-1:32',
          message:
            'This leads to `#mark-and-arrows`, and “Boards” has no heading and no position of that name.',
          hint: 'Did you mean `#marks-and-arrows`?',
        },
      ],
    },
    {
      title: 'The address of a position that is not shown any more, and of one that is',
      course:
        '```moves\n1. e4 e5\n```\n\n' +
        '[Here](#at-rnbqkbnr-pppp1ppp-8-4p3-4P3-8-PPPP1PPP-RNBQKBNR-w-KQkq) and ' +
        '[there](#at-rnbqkbnr-pp1ppppp-8-2p5-4P3-8-PPPP1PPP-RNBQKBNR-w-KQkq).',
      findings: [
        {
          at: '5:80-5:138',
          message: 'This leads to a position that “1” does not show.',
          hint: 'Name a position that it shows with `:here[name]`, and link to it with `[text](pos:name)`.',
        },
      ],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const node of textNodes(chapter, 'link')) {
      const fault = linkFault(node, course, { file: chapter.file, from: chapter.file });
      if (fault) yield fault;
    }
  },
});
