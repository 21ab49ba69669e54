import { nameUses } from '../../model/index.ts';
import { isLabel } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const labelUnknown = defineCourseRule({
  id: 'label-unknown',
  severity: 'error',
  always: true,
  finds: 'A link, block or promise that names a position which nobody has named.',
  documentation: `
\`[text](pos:name)\`, \`from="name"\`, \`at="name"\`, \`:same[name]\` and \`:later[name]\` speak of a
position that some \`:here[name]\` in the course has named.
`,
  examples: [
    {
      title: 'A slip in a link',
      course: '```moves\n1. e4 {:here[main]} e5\n```\n\nBack to [the start](pos:mian).',
      findings: [
        {
          start: '5:9',
          end: '5:30',
          message: 'No position of the course is named `mian`.',
          hint: 'Did you mean `main`?',
        },
      ],
    },
    {
      title: 'A block that starts nowhere',
      course: '```moves from="nowhere"\n1. e4\n```',
      findings: [
        {
          start: '1:16',
          end: '1:23',
          message: 'No position of the course is named `nowhere`.',
          hint: 'Name one with `:here[nowhere]` in a comment behind its move.',
        },
      ],
    },
    {
      title: 'A name that is given later in the course',
      course: '```moves from="main"\n2. Nf3\n```\n\n```moves\n1. e4 e5 {:here[main]}\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const { name, place } of nameUses(chapter)) {
      // What is no name, and a name that could not be placed, have findings of their own.
      if (!isLabel(name) || course.ask('given', name)) continue;
      const near = course.ask('nearestName', name);
      yield {
        place,
        message: `No position of the course is named \`${name}\`.`,
        hint: near
          ? `Did you mean \`${near}\`?`
          : `Name one with \`:here[${name}]\` in a comment behind its move.`,
      };
    }
  },
});
