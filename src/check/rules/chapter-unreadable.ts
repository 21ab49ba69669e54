import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const chapterUnreadable = defineCourseRule({
  id: 'chapter-unreadable',
  severity: 'error',
  always: true,
  finds: 'A chapter, or a part of one, that is not written in the course language.',
  documentation: `
Front matter that is no YAML or lacks a title, a file that is not UTF-8, a block with an attribute
that does not exist, a directive that is misspelt, a FEN that is no position, a picture that lies
outside the course: the finding names the place and what to write.
`,
  examples: [
    {
      title: 'A directive that does not exist',
      course: '```moves\n1. e4 {:hear[main]} e5\n```',
      findings: [
        {
          at: '2:8-2:19',
          message: 'There is no directive `:hear[…]`.',
          hint: 'Did you mean `:here[…]`? For a plain colon write `\\:`.',
        },
      ],
    },
    {
      title: 'A misspelt attribute: the moves are not judged from another position',
      course:
        '```moves\n1. e4 e5 2. Nf3 {:here[main]}\n```\n\n```moves form="main"\n2... d6 3. d4\n```',
      findings: [
        {
          at: '5:10-5:14',
          message: 'A `moves` block has no attribute `form`.',
          hint: 'Did you mean `from`?',
        },
      ],
    },
    {
      title: 'Curly quotation marks',
      course:
        '```moves\n1. e4 e5 2. Nf3 {:here[main]}\n```\n\n```moves from=“main”\n2... d6 3. d4\n```',
      findings: [
        {
          at: '5:15-5:21',
          message:
            'A value stands between curly quotation marks here, and straight ones are wanted.',
          hint: 'Write it with straight quotes: "main".',
        },
      ],
      fixed:
        '```moves\n1. e4 e5 2. Nf3 {:here[main]}\n```\n\n```moves from="main"\n2... d6 3. d4\n```',
    },
    {
      title: 'A misspelt setting of an exercise, and a colon in its text',
      course:
        '```exercise after="1. e4"\nask: How does Black answer?\nanwser: e5\nanswer: e5\n```\n\n```exercise after="1. e4"\nask: Black to move: how?\nanswer: e5\n```',
      findings: [
        {
          at: '3:1-3:7',
          message: 'An exercise has no setting `anwser`.',
          hint: 'Did you mean `answer`?',
        },
        {
          at: '8:6',
          message:
            'This exercise cannot be read here: a value that contains `: ` looks like another name.',
          hint: 'Put the value in quotes: `ask: "Black to move: how?"`. Begin every name at the margin.',
        },
      ],
    },
    {
      title: 'A FEN with two white kings',
      course: '```moves fen="4k3/8/8/8/8/8/8/K3K3 w - - 0 1"\n1. Kd1\n```',
      findings: [
        {
          at: '1:33-1:35',
          message: 'This FEN is no position: White has 2 kings.',
          hint: 'Copy the FEN again from where it was made, or set the piece right by hand.',
        },
      ],
    },
    {
      title: 'A word that does not say what practice asks',
      course: '```moves learn="maine"\n1. e4 e5 {:learn[nothing]} 2. Nf3\n```',
      findings: [
        {
          at: '1:17-1:22',
          message: '`maine` does not say what practice asks.',
          hint: 'Did you mean `main`? Write `all`, `main` (the main line without its variations) or `none` (for reference only).',
        },
        {
          at: '2:18-2:25',
          message: '`nothing` does not say what practice asks.',
          hint: 'Write `all`, `main` (the main line without its variations) or `none` (for reference only).',
        },
      ],
    },
    {
      title: 'A colon in prose is no directive',
      course: 'The ratio is 3:1, at 10:30, White:Black.',
      findings: [],
    },
  ],
  *inChapter({ chapter, course }) {
    yield* problemsOf('chapter-unreadable', chapter);
    for (const block of chapter.blocks) {
      for (const { name, place } of block.kind === 'game' ? block.unknownLimits : []) {
        // A name that nobody has given is told by label-unknown.
        if (!/^\d+$/.test(name) && course.ask('name', name) === undefined) continue;
        yield {
          place,
          message: /^\d+$/.test(name)
            ? `The game has no move ${name}.`
            : `The game never comes to the position \`${name}\`.`,
          hint: 'Name a move number of the game, or a position that stands in its main line.',
        };
      }
    }
  },
  inCourse: (course) => problemsOf('chapter-unreadable', course),
});
