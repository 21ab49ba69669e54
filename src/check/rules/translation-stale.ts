import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const translationStale = defineCourseRule({
  id: 'translation-stale',
  severity: 'warning',
  finds: 'A translation that fell behind when its original changed.',
  documentation: `
\`translations/de/origin.json\` says what the German words were made of: a short hash of each text of the original, and
of what each block says of the board. \`linewright translate de --write\` writes it; commit it with the words. Where the
original says something else now, the finding names both places. Other quotation marks, dashes and spaces are no change.

Where only words have changed, the translation is published as it is. Where the board has changed, readers get the
original chapter until the translation has caught up. \`linewright translate de --write\` adds what is new, puts
\`(en changed)\` before the words to be looked at, and never touches a translator's words.
`,
  examples: [
    {
      title: 'A line that has been added, and words that have changed',
      course: {
        'chapters/1.md': 'The centre is won.\n\n```moves\n1. e4 e5 2. Nf3 Nc6\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md': 'Das Zentrum ist fest.\n\n```moves\n1. e4 e5\n```',
        'translations/de/origin.json':
          '{"chapters/1.md": ["front 47DEQpj8 | 47DEQpj8 wJHZE4Dy", "moves Dkpb5FcM | 47DEQpj8"]}',
      },
      findings: [
        {
          file: 'translations/de/chapters/1.md',
          at: '1:1-1:22',
          message: "The original's words have changed since this was translated.",
        },
        {
          file: 'translations/de/chapters/1.md',
          at: '4:7-4:9',
          message: 'Since it was translated: the original has `Nf3`, and the translation lacks it.',
        },
      ],
    },
    {
      title: 'A translation of which nobody knows what it was made of',
      course: {
        'chapters/1.md': '```moves\n1. e4 e5 {The centre.}\n```',
        'translations/de/course.yaml': 'title: Beispiel\n',
        'translations/de/chapters/1.md': '```moves\n1. e4 e5 {Das Zentrum.}\n```',
      },
      findings: [
        {
          file: 'translations/de/chapters/1.md',
          at: '1:1-1:1',
          message: 'Nothing says which edition of the original this was made of.',
        },
      ],
    },
  ],
  inCourse: (course) => problemsOf('translation-stale', course),
});
