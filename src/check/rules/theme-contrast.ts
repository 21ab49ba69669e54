import { findLowContrasts } from '../../look/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const themeContrast = defineCourseRule({
  id: 'theme-contrast',
  severity: 'error',
  finds: 'Colours of `theme.css` in which text or pieces cannot be read.',
  documentation: `
WCAG 2.2 asks for a contrast of 4.5 : 1 between text and its ground (1.4.3), and of 3 : 1 for what else must be
seen (1.4.11). Every pair of colours that meet on a page is counted, on light screens, on dark ones and on paper, by
the formula of its definition of contrast ratio. A pair that is less than is asked for is told where you set one of
the two. Arrows, marks and edges have a rule of their own, \`theme-signs\`.
`,
  examples: [
    {
      title: 'Grey text on white',
      course: {
        'chapters/1.md': 'Text.',
        'theme.css': ':root {\n  --paper: white;\n  --quiet: #999;\n  --wash: #fafafa;\n}\n',
      },
      findings: [
        {
          file: 'theme.css',
          at: '3:3-3:16',
          message:
            'Quiet text is hard to read on light screens: `--quiet` (#999999) on `--paper` (#ffffff) has a contrast of 2.84 : 1, and WCAG 2.2 asks for 4.5 : 1 (1.4.3).',
          hint: 'A darker one would do: #747474.',
        },
        {
          file: 'theme.css',
          at: '3:3-3:16',
          message:
            'Quiet text beside the board is hard to read on light screens: `--quiet` (#999999) on `--wash` (#fafafa) has a contrast of 2.72 : 1, and WCAG 2.2 asks for 4.5 : 1 (1.4.3).',
          hint: 'A darker one would do: #717171.',
        },
      ],
    },
  ],
  *inCourse({ theme }) {
    if (theme === undefined) return;
    for (const { kind, ...finding } of findLowContrasts(theme)) {
      if (kind === 'text' || kind === 'pieces') yield finding;
    }
  },
});
