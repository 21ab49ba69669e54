import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

const svg = (width: number, height: number) =>
  `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 ${width} ${height}"><path d="M0 0h9"/></svg>`;

export const pictureShape = defineCourseRule({
  id: 'picture-shape',
  severity: 'warning',
  finds: 'A logo, an icon or a card whose size or shape readers would see cut, small or blurred.',
  documentation: `
An \`icon\` is square, and a PNG has 512 by 512 pixels. A \`card\` has 1200 by 630 pixels, or more in the same shape. A
\`logo\` stands in a line of text: it is at most six times as wide as high and twice as high as wide, and has 56
pixels in height if it is no SVG. An SVG says how large it is by its \`viewBox\`. [Logo, icon, card](07-looks.md#logo-icon-card)
shows where they stand.
`,
  examples: [
    {
      title: 'An icon that is not square, and a logo like a ribbon',
      course: {
        'course.yaml':
          'title: Example\nid: example\nside: white\nicon: media/club.svg\nlogo:\n  light: media/club.svg\n  dark: media/ribbon.svg\n',
        'chapters/1.md': 'Text.',
        'media/club.svg': svg(300, 200),
        'media/ribbon.svg': svg(900, 100),
      },
      findings: [
        {
          file: 'course.yaml',
          at: '4:7-4:21',
          message: '`media/club.svg` is 300 by 200 pixels, and an icon is square.',
          hint: 'Crop it, or give it room of its own on two sides: tabs and start pages show it small, with a gap there.',
        },
        {
          file: 'course.yaml',
          at: '7:9-7:25',
          message:
            '`media/ribbon.svg` is 900 by 100 pixels, and the head of a page shows a logo in one line of text.',
          hint: 'Make it at most 6 times as wide as high, and twice as high as wide.',
        },
      ],
    },
    {
      title: 'A square icon and a logo that is not too wide',
      course: {
        'course.yaml':
          'title: Example\nid: example\nside: white\nicon: media/club.svg\nlogo: media/wide.svg\n',
        'chapters/1.md': 'Text.',
        'media/club.svg': svg(64, 64),
        'media/wide.svg': svg(300, 60),
      },
      findings: [],
    },
  ],
  inCourse: (course) => problemsOf('picture-shape', course),
});
