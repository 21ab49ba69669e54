/** Repairs: one run mends all that can be mended, changes no other word, and finds no more to do. */
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { runs } from '../../tests/setup/runs.ts';
import { applyFixes } from '../diagnostics/index.ts';
import { courseOf } from '../model/testing/course-of.ts';
import { checkCourse } from './check-course.ts';

function mend(text: string): { text: string; fixes: number } {
  const fixes = checkCourse(courseOf(text)).diagnostics.flatMap((found) => found.fixes ?? []);
  return { text: applyFixes(text, fixes), fixes: fixes.length };
}

test.each([
  ['number and suffix', '3. e4 e5 2. Qh5+ Nc6', '1. e4 e5 2. Qh5 Nc6'],
  [
    'needless file and missing check',
    '1. e4 e5 2. Qh5 Nc6 3. Qh5xf7',
    '1. e4 e5 2. Qh5 Nc6 3. Qxf7+',
  ],
  ['zeros', '1. e4 e5 2. Nf3 Nf6 3. Bc4 Bc5 4. 0-0', '1. e4 e5 2. Nf3 Nf6 3. Bc4 Bc5 4. O-O'],
])('%s', (_what, wrong, right) => {
  const block = (moves: string) => `\`\`\`moves\n${moves}\n\`\`\`\n`;
  const once = mend(block(wrong));
  expect(once.text).toBe(block(right));
  expect(mend(once.text).fixes).toBe(0);
});

test('in YAML of any style only the moves change', () => {
  const exercise = (style: string, moves: string) =>
    `\`\`\`exercise after="1. e4 e5"\nask: "2+2"\nanswer: ${style}${moves}\n\`\`\`\n`;
  for (const style of ['', '|\n  ', '>\n  ']) {
    expect(mend(exercise(style, '5. Qh5+')).text).toBe(exercise(style, '2. Qh5'));
  }
  expect(mend(exercise('"', '5. Qh5+ {\\u00e9}"')).text).toBe(exercise('"', '2. Qh5 {\\u00e9}"'));
});

const opening = ['e4', 'e5', 'Nf3', 'Nc6', 'Bb5', 'a6', 'Bxc6', 'dxc6', 'O-O', 'Bd6'];
const overwritten = [
  'e2e4',
  'e7e5',
  'Ngf3',
  'Nbc6',
  'Bf1b5',
  'a7a6',
  'Bb5xc6',
  'd7xc6',
  '0-0',
  'Bf8d6',
];

const written = fc
  .tuple(
    fc.integer({ min: 1, max: opening.length }),
    fc.array(
      fc.record({
        number: fc.option(fc.integer({ min: 1, max: 9 })),
        dots: fc.constantFrom('.', '...', ' . '),
        long: fc.boolean(),
        suffix: fc.constantFrom('', '+', '#', '!', '+!?'),
        end: fc.constantFrom(' ', '\n', '\r\n', ' {7. x+} '),
      }),
      { minLength: opening.length, maxLength: opening.length },
    ),
  )
  .map(([length, ways]) =>
    ways
      .slice(0, length)
      .map(({ number, dots, long, suffix, end }, index) => {
        const san = (long ? overwritten : opening)[index];
        return `${number === null ? '' : `${number}${dots}`}${san}${suffix}${end}`;
      })
      .join(''),
  );

test('a second run has nothing to do, and comments are as they were', () => {
  fc.assert(
    fc.property(written, fc.constantFrom('', '> '), (moves, quote) => {
      const block = `\`\`\`moves\n${moves}\n\`\`\``;
      const text = quote + block.replaceAll('\n', `\n${quote}`);
      const once = mend(text);
      expect(mend(once.text)).toEqual({ text: once.text, fixes: 0 });
      expect(once.text.match(/\{.*?\}/gs)).toEqual(text.match(/\{.*?\}/gs));
      expect(once.text.match(/\r?\n/g)).toEqual(text.match(/\r?\n/g));
    }),
    { numRuns: runs(80) },
  );
});

/** Words of moves, sound and broken, in any order: what can be mended among them is mended once. */
const anyWord = fc.constantFrom(
  ...['1. ', '2. ', '3... ', '7.', ...opening, ...overwritten, 'Qh5++', 'exd6e.p.', 'b8Q', 'Kz9'],
  ...['(', ')', '{7. x+}', '!?', '+', '=', '*', '\n', '\r\n', '\t', '; 7. e4\n'],
);
const mixture = fc
  .tuple(fc.integer({ min: 0, max: 6 }), fc.array(anyWord, { maxLength: 15 }))
  .map(([sound, words]) => [...opening.slice(0, sound), ...words].join(' '));
const anyBlock = fc.oneof(
  mixture.map((moves) => `\`\`\`moves\n${moves}\n\`\`\`\n`),
  mixture.map((moves) => `\`\`\`game\n[Result "1-0"]\n\n${moves}\n\`\`\`\n`),
  mixture.map(
    (moves) =>
      `\`\`\`exercise fen="r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq - 2 3"\nask: x\nanswer: ${JSON.stringify(moves)}\n\`\`\`\n`,
  ),
);

test('of any mixture of moves, a second run has nothing to do', () => {
  fc.assert(
    fc.property(fc.array(anyBlock, { maxLength: 3 }), (blocks) => {
      const once = mend(blocks.join('\n'));
      expect(mend(once.text)).toEqual({ text: once.text, fixes: 0 });
    }),
    { numRuns: runs(150) },
  );
});
