import { expect, test } from 'vitest';
import { buildCourse } from '../model/index.ts';
import { readCourse } from '../read/index.ts';
import { checkCourse, rules } from './index.ts';

/** The milder of what a course can set for every rule. */
const lenient = rules
  .filter(({ always }) => !always)
  .map(({ id }) => `  ${id}: off\n`)
  .join('');

// With `exercise-wrong` off an illegal answer was published, and written into the PGN.
test.each([
  ['in a block', '```moves\n1. e4 e4\n```'],
  ['of an exercise', '```exercise after="1. e4"\nask: x\nanswer: e4\n```'],
  [
    'as a wrong move of an exercise',
    '```exercise after="1. e4"\nask: x\nanswer: e5\nwrong: Ke5\n```',
  ],
  ['that leads to a diagram', '```diagram after="1. e4 e4"\ncaption: x\n```'],
  ['of a game', '```game\n[White "A"]\n\n1. e4 e4 *\n```'],
])('no setting publishes an illegal move %s', (_where, block) => {
  const draft = readCourse({
    settings: { path: 'course.yaml', text: `title: T\nside: both\nrules:\n${lenient}` },
    chapters: [{ path: 'chapters/1.md', text: `---\ntitle: One\n---\n\n${block}\n` }],
    games: [],
    media: [],
    problems: [],
  });
  expect(checkCourse(buildCourse(draft)).checked).toBeUndefined();
});
