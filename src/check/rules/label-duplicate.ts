import { defineCourseRule } from '../course-rule.ts';

export const labelDuplicate = defineCourseRule({
  id: 'label-duplicate',
  severity: 'error',
  always: true,
  finds: 'A name that is given to two positions.',
  documentation: `
A name that \`:here[…]\` gives is unique in the whole course: links and \`from="…"\` lead to one
position. The finding stands at the second place and names the first; until one of them is renamed
the first counts.
`,
  examples: [
    {
      title: 'Two chapters fight for one name',
      course: {
        'chapters/1.md': '---\ntitle: One\n---\n```moves\n1. e4 {:here[main]} e5\n```',
        'chapters/2.md': '---\ntitle: Two\n---\n```moves\n1. d4 {:here[main]} d5\n```',
      },
      findings: [
        {
          file: 'chapters/2.md',
          start: '5:8',
          end: '5:19',
          message: 'The name `main` is given already, in chapters/1.md, line 5.',
          hint: 'Give this position another name.',
        },
      ],
    },
    {
      title: 'A name used often, given once',
      course: '```moves\n1. e4 {:here[main]} e5\n```\n\n[Back](pos:main), and [again](pos:main).',
      findings: [],
    },
  ],
  *find(course) {
    for (const { name, place } of course.repeatedLabels) {
      const first = course.labels[name]?.place;
      const where = first
        ? `${first.file === place.file ? '' : `in ${first.file}, `}line ${first.start.line}`
        : 'elsewhere';
      yield {
        place,
        message: `The name \`${name}\` is given already, ${first?.file === place.file ? 'in ' : ''}${where}.`,
        hint: 'Give this position another name.',
        related: first ? [{ place: first, message: `\`${name}\` is given here first` }] : [],
      };
    }
  },
});
