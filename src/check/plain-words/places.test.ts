/** A finding stands where its words do, whatever line ends and blanks stand around them. */
import { expect, test } from 'vitest';
import { courseOf } from '../../model/testing/course-of.ts';
import { checkCourse } from '../check-course.ts';

const block =
  '```moves\n1. e4 e5 {One line,\n    and another: the knight on f4\n    is strong. So is\n    the bishop on d7.}\n```\n';
const prose = '> Some *words*\n> and the knight\n> on g5 too;\n> the rook on e5.\n';

test.each([
  ['line feeds', (text: string) => text],
  ['carriage returns', (text: string) => text.replaceAll('\n', '\r\n')],
  ['wider blanks', (text: string) => text.replaceAll('    ', '       ').replaceAll('> ', '>  ')],
])('%s', (_name, change) => {
  const text = change(`${block}\n${prose}`);
  const found = checkCourse(courseOf(text, 'both')).diagnostics.filter(
    ({ rule }) => rule === 'words-false',
  );
  expect(
    found.map(({ place: { start, end } }) =>
      text.slice(start.offset, end.offset).replace(/[\s>]+/g, ' '),
    ),
  ).toEqual(['the knight on f4', 'the bishop on d7', 'the knight on g5', 'the rook on e5']);
  for (const { place } of found) {
    const { line, column, offset } = place.start;
    const lines = text.split('\n').slice(0, line - 1);
    expect(lines.join('\n').length + (line > 1 ? 1 : 0) + column - 1).toBe(offset);
  }
});

test.each([
  ['plain', 'title: The bishop on d7'],
  ['in single quotes', "title: 'Black''s bishop: the bishop on d7'"],
  ['in double quotes', 'title: "Tab\\t and \\u00fc: the bishop on d7"'],
  ['folded', 'title: A\nsummary: >-\n  One line,\n  the bishop on d7\n  and more.'],
  ['on two plain lines', 'title: A\nsummary: One line,\n   the bishop on d7'],
])('a title or a summary %s', (_name, front) => {
  const text = `---\n${front}\n---\n\n\`\`\`moves\n1. e4 e5\n\`\`\`\n`;
  const found = checkCourse(courseOf(text, 'both')).diagnostics;
  expect(found.map(({ rule }) => rule)).toEqual(['words-false']);
  const { start, end } = found[0]?.place ?? { start: { offset: 0 }, end: { offset: 0 } };
  expect(text.slice(start.offset, end.offset)).toMatch(/^(?:T|t)he bishop on d7$/);
});
