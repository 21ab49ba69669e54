import { findLowContrasts } from '../../look/index.ts';
import { defineCourseRule } from '../course-rule.ts';

export const themeSigns = defineCourseRule({
  id: 'theme-signs',
  severity: 'warning',
  finds: 'Colours of `theme.css` in which arrows, marks, edges or squares are hard to see.',
  documentation: `
WCAG 2.2 asks for a contrast of 3 : 1 between what is needed to understand or use a page and what lies beside it
(1.4.11): arrows and marks on both colours of squares, the frame of the last move, edges of buttons and fields, the
ring around what has the focus. That light and dark squares can be told apart is asked by nobody but us.
`,
  examples: [
    {
      title: 'Yellow arrows',
      course: {
        'chapters/1.md': 'Text.',
        'theme.css': ':root {\n  --board-plan: gold;\n}\n',
      },
      findings: [
        {
          file: 'theme.css',
          at: '2:3-2:21',
          message:
            'Arrows of plans are hard to see on light screens: `--board-plan` (#ffd700) on `--board-light-square` (#fffdf8) has a contrast of 1.37 : 1, and WCAG 2.2 asks for 3 : 1 (1.4.11).',
          hint: 'A darker one would do: #a88e00.',
        },
        {
          file: 'theme.css',
          at: '2:3-2:21',
          message:
            'Arrows of plans are hard to see on light screens: `--board-plan` (#ffd700) on `--board-dark-square` (#d2d0cb) has a contrast of 1.09 : 1, and WCAG 2.2 asks for 3 : 1 (1.4.11).',
          hint: 'A darker one would do: #857000.',
        },
      ],
    },
  ],
  *inCourse({ theme }) {
    if (theme === undefined) return;
    for (const { kind, ...finding } of findLowContrasts(theme)) {
      if (kind === 'signs' || kind === 'squares') yield finding;
    }
  },
});
