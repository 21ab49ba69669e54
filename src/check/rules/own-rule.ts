import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const ownRule = defineCourseRule({
  id: 'own-rule',
  severity: 'error',
  finds:
    "Code of the course's own, in `rules/`, that cannot be run or does not do what a rule does.",
  documentation: `
\`own-rules\` in \`course.yaml\` names the files of \`rules/\` that are run. A file that is not there, that throws,
that takes longer than it may, or that gives something else than findings has a finding of this rule, with the
place in the code where it is known. All other rules go on, and so does everything else in that file. Nothing is
read for it through a link, and code may import nothing but \`linewright/rules\`, modules of Node and files beside it.
`,
  examples: [
    {
      title: 'A file that is not there',
      course: {
        'course.yaml': 'title: Test\nside: white\nown-rules:\n  - reading-tme.mjs\n',
        'chapters/1.md': '---\ntitle: One\n---\n',
        'rules/reading-time.mjs': '// `defineCourseRule` and so on',
      },
      findings: [
        {
          file: 'course.yaml',
          at: '4:5-4:20',
          message: 'There is no file rules/reading-tme.mjs.',
          hint: 'Did you mean `reading-time.mjs`?',
        },
      ],
    },
    {
      title: 'Code that nobody named is not run',
      course: {
        'course.yaml': 'title: Test\nside: white\n',
        'chapters/1.md': '---\ntitle: One\n---\n',
        'rules/reading-time.mjs': 'not even code',
      },
      findings: [],
    },
  ],
  *inCourse(course) {
    yield* problemsOf('own-rule', course);
  },
});
