import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

export const themeUnreadable = defineCourseRule({
  id: 'theme-unreadable',
  severity: 'error',
  always: true,
  finds:
    'Something in `theme.css` that is no CSS, no property of a look, no value of its kind, or would be fetched.',
  documentation: `
\`theme.css\` gives values to the properties of a look (the chapter on looks lists them), brings in type faces
from \`media/\` by \`@font-face\`, and may have rules for named parts, \`::part(cover-title) { … }\`. Everything else
could break a page or fetch something from another site, so it is refused, each thing at its place; the site is
written anew from what was understood, and until then the last one stays.
`,
  examples: [
    {
      title: 'A slip in a name, a size out of bounds, a colour that is none',
      course: {
        'chapters/1.md': 'Text.',
        'theme.css':
          ':root {\n  --acent: #1d4f91;\n  --text-size: 40px;\n  --cover: dark blue;\n}\n',
      },
      findings: [
        {
          file: 'theme.css',
          at: '2:3-2:10',
          message: 'A theme has no property `--acent`.',
          hint: 'Did you mean `--accent`?',
        },
        {
          file: 'theme.css',
          at: '3:16-3:20',
          message:
            '`--text-size` is `40px`, and must be a length from 0.8rem to 1.75rem, in rem, px, pt.',
          hint: 'Write a length from 0.8rem to 1.75rem, in rem, px, pt.',
        },
        {
          file: 'theme.css',
          at: '4:12-4:21',
          message: '`dark blue` is no colour.',
          hint: 'Write one such as `#74211b`, `rgb(116 33 27)`, `oklch(38% 0.12 28)` or a name of CSS.',
        },
      ],
    },
    {
      title: 'A style sheet and a type face of other sites',
      course: {
        'chapters/1.md': 'Text.',
        'theme.css':
          '@import "https://faces.example/a.css";\n@font-face { font-family: A; src: url(https://faces.example/a.woff2); }\n',
      },
      findings: [
        {
          file: 'theme.css',
          at: '1:1-1:38',
          message: 'A theme is one file: `@import` would fetch another.',
          hint: 'Copy what you need from it into theme.css.',
        },
        {
          file: 'theme.css',
          at: '2:35-2:69',
          message: '`https://faces.example/a.woff2` would be fetched from another site.',
          hint: 'Put a copy into the media/ folder of the course and name that: nothing on a published page may ask another site.',
        },
      ],
    },
    {
      title: 'A rule for whatever a page is made of, and one for a part',
      course: {
        'chapters/1.md': 'Text.',
        'theme.css':
          'h1 { color: teal; }\n::part(title) { letter-spacing: 0.02em; position: fixed; }\n',
      },
      findings: [
        {
          file: 'theme.css',
          at: '1:1-1:3',
          message: '`h1` is not for a theme: it would change whatever a page is made of.',
          hint: 'Set properties under `:root`, and give rules to parts by `::part(name)`.',
        },
        {
          file: 'theme.css',
          at: '2:41-2:56',
          message:
            'A theme may not set `position` of a part: it could move, hide or cover what a page needs.',
          hint: 'Colours, type, edges and the room around a part may be set.',
        },
      ],
    },
  ],
  inCourse: (course) => problemsOf('theme-unreadable', course),
});
