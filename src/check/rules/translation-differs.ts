import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const translationDiffers = defineCourseRule({
  id: 'translation-differs',
  severity: 'error',
  finds: 'A translation whose board is not that of the original.',
  documentation: `
In a translation words differ, and the board may not: its moves with their signs, names, claims, marks, arrows,
exercises, links to positions, and the order of headings and blocks are those of the original. So a reader can change
the language in the middle of a line, and practice is one. Sentences may have another order within the prose behind a
block or a heading, and paragraphs may be joined or divided.

What differs because the original has changed since it was translated is [translation-stale](#translation-stale).
`,
  examples: [
    {
      title: 'Another move, and a claim that is lost',
      course: {
        'chapters/1.md': '```moves\n1. e4 e5 2. Nf3 Nc6 {:claim[attacks c6 d4]}\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md': '```moves\n1. e4 e5 2. Nc3 Nc6\n```',
      },
      findings: [
        {
          file: 'translations/de/chapters/1.md',
          at: '2:13-2:16',
          message: 'The original has `Nf3` where the translation has `Nc3`.',
          hint: 'Words may differ in a translation, the board may not: make it as in the original.',
        },
      ],
    },
    {
      title: 'A block that is missing, and a chapter that has no original',
      course: {
        'chapters/1.md': '## A\n\n```moves\n1. e4 e5\n```\n\n```moves\n1. d4 d5\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md': '## B\n\n```moves\n1. e4 e5\n```',
        'translations/de/chapters/2.md': '```moves\n1. e4 e5\n```',
      },
      findings: [
        {
          file: 'translations/de/chapters/1.md',
          at: '5:4-5:4',
          message: 'The translation lacks the block of moves that the original has here.',
        },
        {
          file: 'translations/de/chapters/2.md',
          at: '1:1-1:1',
          message: 'This has no original: there is no chapters/2.md.',
        },
      ],
    },
    {
      title: 'Other words',
      course: {
        'chapters/1.md': 'Black `1...e5` is solid.\n\n```moves\n1. e4 e5 {The centre.}\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md':
          'Schwarz steht fest.\n\nEr hat `1...e5` gespielt.\n\n```moves\n1. e4 e5 {Das Zentrum.}\n```',
      },
      findings: [],
    },
  ],
  inCourse: (course) => problemsOf('translation-differs', course),
});
