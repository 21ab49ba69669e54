import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const translationOpen = defineCourseRule({
  id: 'translation-open',
  severity: 'warning',
  finds: 'Words of a translation that are still to be written.',
  documentation: `
\`linewright translate de --write\` makes the files of a translation with the words of the original in them, and a mark
before each text: \`(en)\` before what is not translated yet, \`(en changed)\` before a translation whose original has
other words now. Whoever translates writes the words anew and takes the mark out. A chapter with a mark is not
published: readers get that of the original, with a note that it is not translated.
`,
  examples: [
    {
      title: 'A text that waits',
      course: {
        'chapters/1.md': 'The centre is Black’s.\n\n```moves\n1. e4 e5\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md': '(en) The centre is Black’s.\n\n```moves\n1. e4 e5\n```',
      },
      findings: [
        {
          file: 'translations/de/chapters/1.md',
          at: '1:1-1:28',
          message: '1 text of this file (4 words) waits for a translation.',
          hint: 'Write it anew and take the mark before it out; until then readers get it in English.',
        },
        {
          file: 'translations/de/course.yaml',
          at: '1:1-1:1',
          message: 'Nothing of this translation is published yet: no chapter of it is ready.',
        },
      ],
    },
    {
      title: 'A chapter that has no translation',
      course: {
        'chapters/1.md': '```moves\n1. e4 e5\n```',
        'chapters/2.md': '```moves\n1. d4 d5\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md': '```moves\n1. e4 e5\n```',
      },
      findings: [
        {
          file: 'translations/de/course.yaml',
          at: '1:1-1:1',
          message: 'Of 2 chapters and pages 1 has no translation: chapters/2.md.',
        },
      ],
    },
  ],
  inCourse: (course) => problemsOf('translation-open', course),
});
