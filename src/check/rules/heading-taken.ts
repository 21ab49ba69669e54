import { toString as plainText } from 'mdast-util-to-string';
import { namedIds, offsetOf } from '../../addresses/index.ts';
import { placeOfNode, slug, textNodes } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const headingTaken = defineCourseRule({
  id: 'heading-taken',
  severity: 'warning',
  finds: 'A heading whose address a named position of its chapter has taken.',
  documentation: `
A heading has its words as its address, \`#main\` for “Main”, unless a position of the chapter has that name: names
come first. So links to the heading, in old letters, news and mails too, lead to the position.
`,
  examples: [
    {
      title: 'A heading and a position of one name',
      course: '```moves\n1. e4 {:here[main]} e5\n```\n\n## Main\n\nWhite has the centre.',
      findings: [
        {
          at: '5:1-5:8',
          message: '`#main` leads to the position `main`, and not to this heading.',
          hint: 'Give one of them another name; as it is, the heading has the address `#main-2`.',
        },
      ],
    },
    {
      title: 'Headings of one name, and a position of another',
      course: '```moves\n1. e4 {:here[centre]} e5\n```\n\n## Main\n\n## Main',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    const { names, headings } = namedIds(chapter);
    const takenBy = new Map([...names].map(([name, id]) => [id, name]));
    for (const node of textNodes(chapter, 'heading')) {
      const id = headings.get(offsetOf(node));
      const wish = slug(node.data?.original ?? plainText(node));
      const name = takenBy.get(wish);
      // Of several headings of these words the first has had the address.
      takenBy.delete(wish);
      const named = chapter.names.find((each) => each.name === name);
      if (id === undefined || named === undefined) continue;
      yield {
        place: placeOfNode(node, chapter.file),
        message: `\`#${wish}\` leads to the position \`${name}\`, and not to this heading.`,
        hint: `Give one of them another name; as it is, the heading has the address \`#${id}\`.`,
        related: [{ place: named.place, message: 'the position has its name here' }],
      };
    }
  },
});
