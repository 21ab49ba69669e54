import type { Finding } from '../../diagnostics/index.ts';
import { type DirectiveNode, placeOfNode, textNodes, walkText } from '../../model/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const todoOpen = defineCourseRule({
  id: 'todo-open',
  severity: 'warning',
  finds: 'Something that the author has left to do.',
  documentation: `
\`:todo[…]\` may stand wherever text stands, in comments, captions and news too, and readers never see it. \`check\`
lists all of them; \`build\`, \`letter\` and \`export\` publish nothing while one is left, so that no note is forgotten.
A chapter with \`draft: true\` in its front matter is not published, and its notes stop nothing. To publish with notes
all the same, write \`todo-open: warning\` under \`rules\` in \`course.yaml\`, or \`:allow[todo-open …]\` on the line of one.
`,
  examples: [
    {
      title: 'Notes in prose and behind a move',
      course:
        'The plan. :todo[add the diagram]\n\n```moves\n1. e4 e5 {:todo[what about 1...c5?]} 2. Nf3\n```',
      findings: [
        {
          at: '1:11-1:33',
          message: 'To do: add the diagram',
          hint: 'Take the note out when it is done; until then nothing is published.',
        },
        { at: '4:11-4:36', message: 'To do: what about 1...c5?' },
      ],
    },
    {
      title: 'A note that may stay',
      course:
        ':todo[find a better game] :allow[todo-open the next edition has it]\n\n```moves\n1. e4 e5\n```',
      findings: [],
    },
  ],
  *inChapter({ chapter }) {
    yield* notesIn(chapter.file, textNodes(chapter, 'courseDirective'));
  },
  *inCourse({ news }) {
    for (const { file, body } of news) {
      const directives: DirectiveNode[] = [];
      walkText(body.children, (node) => {
        if (node.type === 'courseDirective') directives.push(node);
      });
      yield* notesIn(file, directives);
    }
  },
});

function notesIn(file: string, directives: readonly DirectiveNode[]): Finding[] {
  const notes = directives.filter(({ name }) => name === 'todo');
  return notes.map((node) => ({
    place: placeOfNode(node, file),
    message: `To do: ${node.argument}`,
    hint: 'Take the note out when it is done; until then nothing is published.',
  }));
}
