import { shelfFolders } from '../../contract/index.ts';
import { defineCourseRule } from '../course-rule.ts';
import { problemsOf } from '../shared/problems-of.ts';
import type { ShelvedCourse } from '../shelf/shelf-scope.ts';

const course = (title: string, id: string) => `title: ${title}\nid: ${id}\nside: white\n`;

export const shelfSetting = defineCourseRule({
  id: 'shelf-setting',
  severity: 'error',
  always: true,
  finds: 'A setting in `shelf.yaml` that is missing or wrong, or a folder in it that is no course.',
  documentation: `
\`shelf.yaml\` needs \`title\` and \`courses\`, a list of course folders below its own. It may have \`id\`, \`author\`,
\`summary\`, \`language\`, \`notation\`, \`site\` and \`licence\`; nothing else. Each folder is named once, lies in no other, and is
reached through no link. In the site a course stands in a folder of the name of its \`id\`, so each has another.
`,
  examples: [
    {
      title: 'A folder twice, one that is not there, and one that is no course',
      course: {
        'shelf.yaml': 'title: All\ncourses:\n  - slav\n  - ./slav/\n  - french\n  - notes\n',
        'slav/course.yaml': course('Slav', 'slav'),
        'slav/chapters/1.md': '---\ntitle: One\n---\n',
        'frenchy/course.yaml': course('French', 'french'),
        'frenchy/chapters/1.md': '---\ntitle: One\n---\n',
        'notes/todo.md': 'Nothing',
      },
      findings: [
        {
          file: 'shelf.yaml',
          at: '4:5-4:12',
          message: '`./slav/` is the course `slav`, which line 3 names already.',
          hint: 'Name each course once: take this line out.',
        },
        {
          file: 'shelf.yaml',
          at: '5:5',
          message: 'There is no folder `french` here.',
          hint: 'Did you mean `frenchy`?',
        },
        {
          file: 'shelf.yaml',
          at: '6:5',
          message: 'The folder `notes` is no course: it has no course.yaml.',
        },
      ],
    },
    {
      title: 'The shelf itself, a folder above it, a course in a course',
      course: {
        'shelf.yaml': 'title: All\ncourses:\n  - .\n  - ../slav\n  - slav\n  - slav/exchange\n',
        'slav/course.yaml': course('Slav', 'slav'),
        'slav/chapters/1.md': '---\ntitle: One\n---\n',
        'slav/exchange/course.yaml': course('Exchange', 'exchange'),
      },
      findings: [
        {
          file: 'shelf.yaml',
          at: '3:5',
          message: '`.` is the folder of the shelf itself.',
        },
        {
          file: 'shelf.yaml',
          at: '4:5',
          message: '`../slav` does not lie in the folder of the shelf.',
        },
        {
          file: 'shelf.yaml',
          at: '6:5',
          message: 'The course `slav/exchange` lies in the course `slav`.',
        },
      ],
    },
    {
      title: 'One id for two courses, and one that the site needs itself',
      course: {
        'shelf.yaml': 'title: All\nauther: A. Coach\ncourses: [slav, slav-2, pictures]\n',
        'slav/course.yaml': course('Slav', 'slav'),
        'slav/chapters/1.md': '---\ntitle: One\n---\n',
        'slav-2/course.yaml': course('The Slav again', 'Slav'),
        'slav-2/chapters/1.md': '---\ntitle: One\n---\n',
        'pictures/course.yaml': course('Pictures', 'images'),
        'pictures/chapters/1.md': '---\ntitle: One\n---\n',
      },
      findings: [
        {
          file: 'shelf.yaml',
          at: '2:1',
          message: 'shelf.yaml has no `auther`.',
          hint: 'Did you mean `author`?',
        },
        {
          file: 'shelf.yaml',
          at: '3:17',
          message: 'The course in `slav-2` has the id `Slav`, as the one in `slav` has.',
          hint: 'Give one of them another `id: …` in its course.yaml.',
        },
        {
          file: 'shelf.yaml',
          at: '3:25',
          message:
            'The course in `pictures` has the id `images`, and the shelf needs that folder for itself.',
        },
      ],
    },
    {
      title: 'A shelf with no courses',
      course: { 'shelf.yaml': 'title: All\ncourses: []\n' },
      findings: [
        {
          file: 'shelf.yaml',
          at: '2:10',
          message:
            '`courses` must be a list of one to ninety-nine course folders, each on a line of its own behind `- `.',
        },
      ],
    },
  ],
  *inShelf(shelf) {
    yield* problemsOf('shelf-setting', shelf);
    const first = new Map<string, ShelvedCourse>();
    for (const course of shelf.courses) {
      const { folder, place, entry } = course;
      // Compared without case: some file systems know no difference.
      const name = entry.id.toLowerCase();
      const earlier = first.get(name);
      if (earlier) {
        yield {
          place,
          message: `The course in \`${folder}\` has the id \`${entry.id}\`, as the one in \`${earlier.folder}\` has.`,
          hint: 'Give one of them another `id: …` in its course.yaml.',
          related: [{ place: earlier.place, message: `\`${earlier.folder}\` is named here` }],
        };
      } else if (shelfFolders.includes(name)) {
        yield {
          place,
          message: `The course in \`${folder}\` has the id \`${entry.id}\`, and the shelf needs that folder for itself.`,
          hint: 'Give the course another `id: …` in its course.yaml.',
        };
      } else first.set(name, course);
    }
  },
});
