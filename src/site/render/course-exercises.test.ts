import { expect, test } from 'vitest';
import type { CourseExercises } from '../../contract/index.ts';
import { adviceOf } from '../../model/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { assignAddresses, contextOf, freshParts } from '../../render/index.ts';
import { exerciseFiles } from './course-exercises.ts';

function exercisesOf(files: Parameters<typeof courseOf>[0]): CourseExercises | undefined {
  const course = courseOf(files, 'white');
  const base = contextOf(course);
  const parts = freshParts(base);
  const given = { addresses: assignAddresses(course), parts, strings: base.strings };
  const [file] = exerciseFiles(course, adviceOf(course).size > 0, given);
  const [, json = ''] = /JSON\.parse\((.*)\);\s*$/s.exec(file?.content ?? '') ?? [];
  return json === '' ? undefined : JSON.parse(JSON.parse(json));
}

const moves = '```moves\n1. e4 e5 2. Nf3 {:here[knight]} Nc6 3. Bb5\n```\n';
const exercise =
  '```exercise after="1. e4 e5 2. Nf3 Nc6"\nask: What does White play, as [before](pos:knight)?\nanswer: 3. Bb5\n```\n';

test('practice gets the exercises of each chapter as its page has them, with links that lead there', () => {
  const found = exercisesOf({ 'chapters/1.md': moves, 'chapters/2.md': exercise });
  expect(found?.exercises).toHaveLength(1);
  const [first] = found?.exercises ?? [];
  expect(first?.chapter).toBe(1);
  expect(first?.key).toBe('r1bqkbnr/pppp1ppp/2n5/4p3/4P3/5N2/PPPP1PPP/RNBQKB1R w KQkq -');
  expect(first?.html).toMatch(/^<section class="exercise"/);
  expect(first?.html).toContain('href="1.html#');
  expect(found?.words.chapters).toEqual({ '1.html': '1', '2.html': '2' });
});

test('no file where there are none', () => {
  expect(exercisesOf(moves)).toBeUndefined();
  expect(exercisesOf(exercise)).toBeUndefined();
});
