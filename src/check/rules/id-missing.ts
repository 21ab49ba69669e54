import { courseId } from '../../model/index.ts';
import { idLine } from '../../read/index.ts';
import { defineCourseRule } from '../course-rule.ts';

const message =
  'The course has no `id`: under another title, browsers, e-readers and feeds would take it for a new course.';

export const idMissing = defineCourseRule({
  id: 'id-missing',
  severity: 'warning',
  finds: 'A course without an `id`, so that its title names it.',
  documentation: `
What students have practised is kept in their browsers under the \`id\` of the course; e-readers and
readers of its news know it by that too. Without an \`id\` one is made from the title: mend the title,
and all of them take it for a course that they have never seen. \`linewright check --fix\` writes the one
that is in force today, so that nothing moves. Leave it as it is from then on, whatever the title becomes.

A chapter needs none. Its address is made from the name of its file, which another title does not change,
and progress hangs on positions, not on chapters. Give a chapter an \`id\` before you rename its file, so
that links to it still lead there.
`,
  examples: [
    {
      title: 'A title by which the course is known',
      course: {
        'course.yaml': 'title: The Quiet Italian\nside: white\n',
        'chapters/1.md': '---\ntitle: One\n---\n',
      },
      findings: [
        {
          file: 'course.yaml',
          at: '1:8-1:25',
          message,
          hint: 'Write `id: the-quiet-italian` below it, and never change that line.',
        },
      ],
      fixed: 'title: The Quiet Italian\nid: the-quiet-italian\nside: white\n',
    },
    {
      title: 'A title that would be a number as an id',
      course: {
        'course.yaml': 'title: "2026" # so far\nside: white',
        'chapters/1.md': '---\ntitle: One\n---\n',
      },
      findings: [
        {
          file: 'course.yaml',
          at: '1:8-1:14',
          message,
          hint: 'Write `id: "2026"` below it, and never change that line.',
        },
      ],
      fixed: 'title: "2026" # so far\nid: "2026"\nside: white',
    },
    {
      title: 'An id that stays while the title goes on',
      course: {
        'course.yaml': 'title: The Very Quiet Italian\nid: the-quiet-italian\nside: white\n',
        'chapters/1.md': '---\ntitle: One\n---\n',
      },
      findings: [],
    },
  ],
  *inCourse(course) {
    if (course.missingId === undefined) return;
    const { place, gap } = course.missingId;
    const line = idLine(courseId(course));
    yield {
      place,
      message,
      hint: `Write \`${line}\` below it, and never change that line.`,
      ...(gap && { fixes: [{ place: gap.place, text: gap.before + line + gap.after }] }),
    };
  },
});
