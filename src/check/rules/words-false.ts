import { defineCourseRule } from '../course-rule.ts';
import { falseWords } from '../plain-words/index.ts';

export const wordsFalse = defineCourseRule({
  id: 'words-false',
  severity: 'warning',
  finds: 'A sentence that the board refutes.',
  documentation: `
In English, German and Spanish courses the checker reads comments, prose, headings, tables, captions,
alternative texts, questions, hints, titles and summaries for plain statements, and holds them against the
position they speak of: a comment against the position after its move, prose against the last move shown
before it and the blocks around it, the title of a position against that position, the title and the summary
of a chapter against all that the chapter shows.

It reads only what it can be sure of. A sentence about a plan, a condition, the past, another line or
another game is left alone, and so is a question. [Plain words](06-plain-words.md) says what is read.
`,
  examples: [
    {
      title: 'A knight where none stands',
      course: '```moves\n1. e4 e5 2. Nf3 {The knight on f4 attacks e5.} Nc6\n```',
      findings: [
        {
          at: '2:18-2:34',
          message: '“The knight on f4” is not so after 2.Nf3: f4 is empty.',
          hint: 'White has a knight on b1 and f3, Black has a knight on b8 and g8. Mend the words; if they speak of another position, name the move that leads there, or write `:allow[words-false …]`.',
        },
      ],
    },
    {
      title: 'A heading that nothing in its chapter bears out',
      course: '## The knight on f4\n\n```moves\n1. e4 e5 2. Nf3 Nc6\n```\n\n## The knight on c6',
      findings: [
        {
          at: '1:4',
          message: '“The knight on f4” is not so in any position of this chapter: f4 is empty.',
        },
      ],
    },
    {
      title: 'A title and a summary',
      course:
        '---\ntitle: The knight on f3\nsummary: >-\n  Black brings out both knights, and\n  the open e-file is his.\n---\n\n```moves\n1. e4 e5 2. Nf3 Nc6 {:here[four "The bishop on c4"]}\n```',
      findings: [
        {
          at: '5:3-5:18',
          message:
            '“the open e-file” is not so in any position of this chapter: the pawns on e4 and e5 stand on the e-file.',
          hint: 'Mend the words: a title and a summary may speak of any position that the chapter shows, and of no other.',
        },
        {
          at: '9:34-9:50',
          message: '“The bishop on c4” is not so after 2...Nc6: c4 is empty.',
        },
      ],
    },
    {
      title: 'A move that cannot be played, without code marks',
      course: '```moves\n1. e4 e5 2. Nf3 Nc6\n```\n\nBlack has answered with 2...Nf3.',
      findings: [
        {
          at: '5:25-5:32',
          message: '2...Nf3 can be played in no position of this chapter at move 2.',
          hint: 'There the chapter has Nc6.',
        },
      ],
    },
    {
      title: 'A heading and a table that the lines do not keep',
      course:
        '```moves\n1. e4 c5 (1... e5 2. Nf3) 2. c3\n```\n\n## Against 1...c5 and 1...e6\n\n| He plays | We answer |\n| --- | --- |\n| 1...c5 | 2.c3 |\n| 1...e5 | 2.c3 |',
      findings: [
        {
          at: '5:23-5:29',
          message: '1...e6 is announced here, and no line of the course has it.',
          hint: 'There the chapter has c5, e5.',
        },
        {
          at: '10:12-10:16',
          message: 'The table answers 1...e5 with 2.c3, and no line of the course does.',
          hint: 'There the course has Nf3.',
        },
      ],
    },
    {
      title: 'A link that leads elsewhere than its words say',
      course: {
        'chapters/1.md': '```moves\n1. e4 {:here[king]} e5\n```',
        'chapters/2.md': '```moves\n1. e4 c5 {See [the next chapter](pos:king).}\n```',
      },
      findings: [
        {
          file: 'chapters/2.md',
          at: '2:20-2:32',
          message: '“next chapter” is not so: what it links to stands in chapters/1.md.',
        },
      ],
    },
    {
      title: 'A course in German',
      course: {
        'course.yaml': 'title: Beispiel\nid: example\nside: white\nlanguage: de\n',
        'chapters/1.md':
          '```moves\n1. e4 e5 {Schwarz ist am Zug.} 2. Nf3 {Der Springer auf f3 steht gut.}\n```',
      },
      findings: [
        {
          at: '2:11',
          message: "“Schwarz ist am Zug” is not so after 1...e5: it is White's move.",
        },
      ],
    },
    {
      title: 'A course in Spanish',
      course: {
        'course.yaml': 'title: Ejemplo\nid: example\nside: white\nlanguage: es\n',
        'chapters/1.md':
          '```moves\n1. e4 e5 {Juegan las blancas.} 2. Nf3 {El caballo de f4 ataca e6.}\n```',
      },
      findings: [{ at: '2:40', message: '“El caballo de f4” is not so after 2.Nf3: f4 is empty.' }],
    },
    {
      title: 'An exception',
      course:
        '```moves\n1. e4 e5 2. Nf3 {The knight on f4 is a joke of our club. :allow[words-false a joke]} Nc6\n```',
      findings: [],
    },
    {
      title: 'True statements, plans and conditions',
      course:
        '```moves\n1. e4 e5 {White to move.} 2. Nf3 {The knight on f3 attacks e5.} Nc6 {A knight on d5 would be strong. White wants to put the bishop on b5.}\n```\n\nAfter `2.Nf3` the knight on f3 can still be chased. If White waits, the knight on d4 is a pest.',
      findings: [],
    },
  ],
  inChapter: ({ chapter, course }) => falseWords(chapter, course),
});
