import { mediaKinds } from '../../media/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';

const kinds = Object.keys(mediaKinds)
  .map((kind) => `\`${kind}\``)
  .join(', ');

export const mediaUnfit = defineCourseRule({
  id: 'media-unfit',
  severity: 'error',
  always: true,
  finds:
    'A file of `media/` that a browser or a server would run, or that is not what its name says.',
  documentation: `
What lies on your site can do there whatever the site can do: read what a student has practised, say
things in your name, and on some servers change how the whole site is served. So a course shows and hands
out files of these kinds: ${kinds}. Any other file can go into a zip file.

A file must begin as its kind does. An SVG is a document that may hold scripts and fetch things, so one
with an active part is refused, and the finding names the parts and their places. Linewright does not
take them out for you: the picture would no longer be the one that you have seen. Programs that draw
have a *plain* SVG among the kinds they save.
`,
  examples: [
    {
      title: 'A picture with a script in it',
      course: {
        'chapters/1.md': '![The plan](media/plan.svg)',
        'media/plan.svg':
          '<svg xmlns="http://www.w3.org/2000/svg" onload="send()">\n  <script>send()</script>\n</svg>',
      },
      findings: [
        {
          at: '1:1-1:28',
          message:
            'media/plan.svg is not published: it has the event handler `onload` and `<script>`.',
          hint: 'A browser that opens the picture would run or fetch that. Export it again as a plain SVG, or as a PNG.',
        },
      ],
    },
    {
      title: 'A page that a server would run',
      course: {
        'chapters/1.md': 'The games are [here](media/games.shtml).',
        'media/games.shtml': '<!--#include file="games.txt" -->',
      },
      findings: [
        {
          at: '1:15-1:40',
          message:
            'media/games.shtml is not published: files that end with .shtml are none of the kinds that a course hands out.',
          hint: 'Files of these kinds are published: avif, gif, jpeg, jpg, png, svg, webp, csv, docx, epub, odp, ods, odt, pdf, pgn, pptx, txt, xlsx, zip, flac, m4a, mp3, mp4, ogg, opus, wav, webm, otf, ttf, woff, woff2. Put others into a zip file.',
        },
      ],
    },
    {
      title: 'A plain picture',
      course: {
        'chapters/1.md': '![The plan](media/plan.svg)',
        'media/plan.svg': '<svg xmlns="http://www.w3.org/2000/svg"><path d="M0 0h9"/></svg>',
      },
      findings: [],
    },
  ],
  inChapter: ({ chapter }) => problemsOf('media-unfit', chapter),
  inCourse: (course) => problemsOf('media-unfit', course),
});
