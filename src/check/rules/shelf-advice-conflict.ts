import type { Finding, Place } from '../../diagnostics/index.ts';
import { expandPlace } from '../chapter-summary.ts';
import { defineCourseRule } from '../course-rule.ts';
import type { AdviceOfCourse } from '../shelf/course-entry.ts';
import type { ShelfScope, ShelvedCourse } from '../shelf/shelf-scope.ts';

const course = (id: string, more = '') => `title: ${id}\nid: ${id}\nside: white\n${more}`;
const chapter = (moves: string) => `---\ntitle: One\n---\n\`\`\`moves\n${moves}\n\`\`\`\n`;

export const shelfAdviceConflict = defineCourseRule({
  id: 'shelf-advice-conflict',
  severity: 'warning',
  finds: 'Two courses of a shelf for the same side that advise different moves in one position.',
  documentation: `
Each course may be right by itself; a student who takes both is asked for two answers in one position. The finding
stands at the advice of the course that \`shelf.yaml\` names later, and names the place in the other.

What comes before the subject of a course, which its setting \`begins\` names, does not count. Keep one advice, or
give the reason on the line of either with \`:allow[shelf-advice-conflict reason]\`. Whether such an exception is needed
is known only where the shelf is checked: in a course that is checked alone none is called unused.
`,
  examples: [
    {
      title: 'Two courses for White',
      course: {
        'shelf.yaml': 'title: All\ncourses: [quiet, sharp]\n',
        'quiet/course.yaml': course('quiet'),
        'quiet/chapters/1.md': chapter('1. e4 e5 2. Nf3 Nc6 3. Bb5'),
        'sharp/course.yaml': course('sharp'),
        'sharp/chapters/1.md': chapter('1. e4 e5 2. f4 exf4 3. Nf3'),
      },
      findings: [
        {
          file: 'sharp/chapters/1.md',
          at: '5:13',
          message:
            'This course advises 2.f4 in a position where “quiet” advises 2.Nf3 (quiet/chapters/1.md, line 5).',
          hint: 'Keep one advice, or give the reason on either line: `:allow[shelf-advice-conflict reason]`.',
        },
      ],
    },
    {
      title: 'The reason is given, in the other course',
      course: {
        'shelf.yaml': 'title: All\ncourses: [quiet, sharp]\n',
        'quiet/course.yaml': course('quiet'),
        'quiet/chapters/1.md': chapter(
          '1. e4 e5 2. Nf3 {:allow[shelf-advice-conflict for those who have little time]} Nc6 3. Bb5',
        ),
        'sharp/course.yaml': course('sharp'),
        'sharp/chapters/1.md': chapter('1. e4 e5 2. f4 exf4 3. Nf3'),
      },
      findings: [],
    },
    {
      title: 'What comes before the subject of one of them; another side',
      course: {
        'shelf.yaml': 'title: All\ncourses: [open, closed, black]\n',
        'open/course.yaml': course('open', 'begins: start\n'),
        'open/chapters/1.md': chapter('1. e4 e5 {:here[start]} 2. Nf3'),
        'closed/course.yaml': course('closed'),
        'closed/chapters/1.md': chapter('1. d4 d5 2. c4'),
        'black/course.yaml': 'title: black\nid: black\nside: black\n',
        'black/chapters/1.md': chapter('1. e4 c5'),
      },
      findings: [],
    },
  ],
  *inShelf({ courses }: ShelfScope) {
    for (const side of ['white', 'black'] as const) {
      const same = courses.filter(({ entry }) => entry.side === side);
      // Where one course has said it already, a third is compared with that one.
      const known = new Map<string, { course: ShelvedCourse; advice: AdviceOfCourse }>();
      for (const course of same.length > 1 ? same : []) {
        for (const advice of course.entry.advice) {
          const [key, san] = advice;
          const earlier = known.get(key);
          if (earlier === undefined) known.set(key, { course, advice });
          else if (earlier.advice[1] !== san) yield conflict(earlier, { course, advice });
        }
      }
    }
  },
});

interface Advised {
  readonly course: ShelvedCourse;
  readonly advice: AdviceOfCourse;
}

function conflict(earlier: Advised, later: Advised): Finding {
  const there = placeOf(earlier);
  const [, , theirs] = earlier.advice;
  const [, , ours] = later.advice;
  const where = `${there.file}, line ${there.start.line}`;
  return {
    place: placeOf(later),
    message: `This course advises ${ours} in a position where “${earlier.course.entry.title}” advises ${theirs} (${where}).`,
    hint: 'Keep one advice, or give the reason on either line: `:allow[shelf-advice-conflict reason]`.',
    related: [{ place: there, message: `${theirs} is advised here` }],
  };
}

function placeOf({ course, advice: [, , , file, at] }: Advised): Place {
  return expandPlace(`${course.folder}/${file}`, at);
}
