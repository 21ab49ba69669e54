import { nameUses, textNodes } from '../../model/index.ts';
import { isLabel } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { siblingFault } from '../shared/sibling-fault.ts';

const inShelf = (id: string, text: string) => ({
  [`${id}/course.yaml`]: `title: ${id}\nid: ${id}\nside: white\n`,
  [`${id}/chapters/1.md`]: `---\ntitle: One\n---\n\n${text}\n`,
});

export const labelUnknown = defineCourseRule({
  id: 'label-unknown',
  severity: 'error',
  always: true,
  finds: 'A link, block or promise that names a position which nobody has named.',
  documentation: `
\`[text](pos:name)\`, \`from="name"\`, \`at="name"\`, \`:same[name]\` and \`:later[name]\` speak of a
position that some \`:here[name]\` in the course has named. Where several courses stand on a
[shelf](07-several-courses.md), \`[text](pos:course/name)\` leads to a position that another one has named, in a
chapter that is no draft.
`,
  examples: [
    {
      title: 'A slip in a link',
      course: '```moves\n1. e4 {:here[main]} e5\n```\n\nBack to [the start](pos:mian).',
      findings: [
        {
          at: '5:25-5:29',
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
          at: '1:16-1:23',
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
    {
      title: 'Links into another course of the shelf',
      course: {
        'shelf.yaml': 'title: All\ncourses: [slav, french]\n',
        ...inShelf('slav', '```moves\n1. d4 d5 2. c4 c6 {:here[tabiya]} 3. Nf3\n```'),
        ...inShelf(
          'french',
          'As in [the Slav](pos:slav/tabiya), [there](pos:slav/tabya) and [there](pos:slaw/tabiya).',
        ),
      },
      findings: [
        {
          file: 'french/chapters/1.md',
          at: '5:48-5:58',
          message: '“slav” publishes no position that is named `tabya`.',
          hint: 'Did you mean `slav/tabiya`?',
        },
        {
          file: 'french/chapters/1.md',
          at: '5:76-5:87',
          message: 'The shelf has no course `slaw`.',
          hint: 'Did you mean `slav/tabiya`?',
        },
      ],
    },
  ],
  *inChapter({ chapter, course }) {
    for (const { name, written: place } of nameUses(chapter)) {
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
    for (const node of textNodes(chapter, 'courseLink')) {
      const fault = siblingFault(node, course);
      if (fault) yield { place: { file: chapter.file, ...node.labelRange }, ...fault };
    }
  },
});
