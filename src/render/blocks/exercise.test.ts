import { describe, expect, test } from 'vitest';
import { readPositionAddress } from '../../contract/position-address.ts';
import { readableText, renderCourse } from '../../site/render/testing/render-course.ts';

const open = '```moves\n1. e4 e5 2. Nf3 Nc6 {:here[open]} 3. Bb5 a6\n```\n';
const question = `\`\`\`exercise at="open"
ask: What now?
answer: 3. Bb5 {asks the knight} a6 4. Ba4
also: 3. Bc4 {is another course}
wrong: 3. h4 {does nothing} d5
hint: Ask the knight.
\`\`\``;

/** The part of a page that one tag with a class opens, to the end of the page. */
function from(html: string, className: string): string {
  return html.slice(html.search(new RegExp(`<\\w+ class="${className}"`)));
}

describe('an exercise', () => {
  const [page = ''] = renderCourse([`${open}\n${question}\n`]);
  const exercise = from(page, 'exercise');

  test('asks, shows whose move it is, and folds hint and answer', () => {
    expect(readableText(exercise.slice(0, exercise.indexOf('<section class="answers"')))).toBe(
      [
        'Exercise 1',
        'What now? White to move',
        'Hint',
        'Ask the knight.',
        'Answer',
        '3. Bb5 asks the knight 3... a6 4. Ba4',
        'Good too, but not the answer:',
        '3. Bc4 is another course',
        'Not the answer:',
        '3. h4 does nothing 3... d5',
      ].join('\n'),
    );
    expect(exercise).toContain('<details class="answer">');
    expect(exercise).not.toContain('<details class="answer" open');
  });

  test('carries the position after each move of its lines', () => {
    const [, address] = /data-p="([^"]*)"[^>]*>4\./.exec(exercise) ?? [];
    const key = 'r1bqkbnr/1ppp1ppp/p1n5/4p3/B3P3/5N2/PPPP1PPP/RNBQK2R b KQkq -';
    expect(readPositionAddress(address ?? '')?.key).toBe(key);
  });

  test('does not end the page’s own line: its ids are its own', () => {
    const ids = [...page.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id);
    expect(new Set(ids).size).toBe(ids.length);
    expect(ids).toContain('exercise-1-answer-1-1');
  });

  test('has its answer once more at the end of the chapter, for paper, without links', () => {
    const answers = from(page, 'answers');
    expect(readableText(answers)).toContain('Exercise 1\n3. Bb5 asks the knight 3... a6 4. Ba4');
    expect(answers).not.toContain('<a class="move"');
  });
});

test('exercises are numbered in each chapter', () => {
  const [one = '', two = ''] = renderCourse([
    `${open}\n${question}\n\n${question}\n`,
    `${question}\n`,
  ]);
  expect(one).toContain('aria-label="Exercise 2"');
  expect(two).toContain('aria-label="Exercise 1"');
  expect(two).not.toContain('aria-label="Exercise 2"');
});

test('a move before the question is said in words; hints are folded one by one', () => {
  const [page = ''] = renderCourse([
    `${open}\n\n\`\`\`exercise at="open" before="3. Bc4"\nask: How do you defend?\nanswer: 3... Bc5 4. c3 Nf6?? ( 4... Qe7 )\nhint:\n  - First.\n  - Second.\n\`\`\`\n`,
  ]);
  const exercise = from(page, 'exercise');
  expect(readableText(exercise)).toContain(
    'White has just played 3.Bc4. How do you defend? Black to move',
  );
  expect(exercise).toContain('data-last="f1c4"');
  expect(exercise).toContain('data-turn="black"');
  const hints = [...exercise.matchAll(/<summary>(Hint[^<]*)<.summary><p>([^<]*)</g)];
  expect(hints.map(([, name, text]) => [name, text])).toEqual([
    ['Hint 1 of 2', 'First.'],
    ['Hint 2 of 2', 'Second.'],
  ]);
  expect(exercise.match(/data-bad/g)).toHaveLength(1);
});

test('a page without exercises has no list of answers', () => {
  const [page = ''] = renderCourse([open]);
  expect(page).not.toContain('answers');
});
