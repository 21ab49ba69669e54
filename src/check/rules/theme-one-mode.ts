import { findOneMode } from '../../look/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const themeOneMode = defineCourseRule({
  id: 'theme-one-mode',
  severity: 'warning',
  finds: 'A colour of `theme.css` that is set for light screens alone.',
  documentation: `
Every reader may have a dark screen, by the system or by the settings of the page. A colour that is set under
\`:root\` is for light ones; on dark ones it stays ours until it is set there too. A cover alone is one cloth: where
nothing is said of it for the dark, it is the same there.
`,
  examples: [
    {
      title: 'Blue by day, red by night',
      course: {
        'chapters/1.md': 'Text.',
        'theme.css': ':root {\n  --accent: #1d4f91;\n  --cover: #12335e;\n}\n',
      },
      findings: [
        {
          file: 'theme.css',
          at: '2:3-2:20',
          message: '`--accent` is yours on light screens alone: on dark ones it stays #ec947f.',
          hint: 'Set it for dark screens too: `@media (prefers-color-scheme: dark) { :root { --accent: …; } }`.',
        },
      ],
    },
  ],
  *inCourse({ theme }) {
    if (theme !== undefined) yield* findOneMode(theme);
  },
});
