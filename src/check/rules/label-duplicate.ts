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
          at: '5:8-5:19',
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
  *inChapter({ chapter, course }) {
    for (const { name, place } of chapter.names) {
      const first = course.ask('namePlace', name)?.place;
      if (!first) continue;
      const isOwn = first.file === place.file;
      if (isOwn && first.start.offset === place.start.offset) continue;
      yield {
        place,
        message: `The name \`${name}\` is given already, in ${isOwn ? '' : `${first.file}, `}line ${first.start.line}.`,
        hint: 'Give this position another name.',
        related: [{ place: first, message: `\`${name}\` is given here first` }],
      };
    }
  },
});
