import { expect, test } from 'vitest';
import { applyFixes } from '../../diagnostics/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { checkCourse } from '../check-course.ts';
import { claimFixes } from './claim-fixes.ts';

function addClaims(text: string): string {
  return applyFixes(
    text,
    claimFixes(courseOf(text, 'both'), () => text),
  );
}

test('a true statement gets its claim, behind its sentence', () => {
  const block = (comment: string) => `\`\`\`moves\n1. e4 d5 2. exd5 {${comment}}\n  Qxd5\n\`\`\`\n`;
  const once = addClaims(block('White is a pawn up. For a moment.'));
  expect(once).toBe(block('White is a pawn up. :claim[material +1] For a moment.'));
  expect(addClaims(once)).toBe(once);
});

test('over several lines, in prose, with emphasis, one claim for two', () => {
  const text = (first: string, second: string) =>
    `\`\`\`moves\n1. e4 e5 2. Nf3 Nc6 3. Bb5 a6 4. Bxc6 dxc6 {The doubled c-pawns\n    are the price, and *the d-file is half-open.${first}* So it\n    goes.}\n\`\`\`\n\n> The doubled c-pawns stay.${second}\n> Black has them.\n`;
  const once = addClaims(text('', ''));
  expect(once).toBe(text(' :claim[doubled c and half-open d black]', ''));
  expect(addClaims(once)).toBe(once);
  expect(checkCourse(courseOf(once, 'both')).diagnostics).toEqual([]);
});

test('what is false, planned or claimed already gets none; nor a heading, a table, a caption', () => {
  const text = [
    '```moves',
    '1. e4 e5 {White is a pawn up. If he takes, the d-file is open.} 2. Nf3 {The e-file is not open. :claim[not open e]}',
    '```',
    '',
    '# The d-file is not open',
    '',
    '| a | b |',
    '| --- | --- |',
    '| The d-file is not open. | c |',
    '',
    '```diagram after="1. e4"',
    'caption: The d-file is not open.',
    '```',
    '',
  ].join('\n');
  expect(addClaims(text)).toBe(text);
});

test('nothing is put into a file that is not as it was read', () => {
  const course = courseOf('```moves\n1. e4 d5 2. exd5 {White is a pawn up.}\n```\n', 'both');
  expect(claimFixes(course, () => '```moves\n1. e4 {More.} d5 2. exd5 {White}\n```\n')).toEqual([]);
});
