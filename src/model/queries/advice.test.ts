import { expect, test } from 'vitest';
import { courseOf } from '../testing/course-of.ts';
import { adviceOf } from './advice.ts';

const moves = (text: string, info = '') => `\`\`\`moves${info}\n${text}\n\`\`\`\n`;

/** All that a course for White advises, in SAN. */
function advised(...blocks: readonly string[]): string[] {
  const course = courseOf({ 'chapters/1.md': blocks.join('\n') });
  return [...adviceOf(course).values()].flatMap((all) => all.map(({ san }) => san));
}

test('the first move that a block gives the side of the course, in variations too', () => {
  expect(advised(moves('1. e4 e5 ( 1... c5 2. Nf3 ) 2. Nc3 ( 2. Bc4 )'))).toEqual([
    'e4',
    'Nf3',
    'Nc3',
  ]);
});

test('nothing at or behind an option or a bad move of the side of the course', () => {
  expect(advised(moves('1. e4 e5 2. Bc4 {:option[]} Nf6 3. d3'))).toEqual(['e4']);
  expect(advised(moves('1. e4 e5 2. Qh5?! Nc6 3. Bc4'))).toEqual(['e4']);
});

test('what stands behind a bad move of the other side is advice', () => {
  expect(advised(moves('1. e4 e5 2. Nf3 f6? 3. Nxe5'))).toEqual(['e4', 'Nf3', 'Nxe5']);
});

test('nor in blocks that start there, or from a block that does', () => {
  const option = moves('1. e4 e5 2. Bc4 {:option[] :here[bishop]}');
  const first = moves('2... Nf6 3. d3 Bc5 {:here[quiet]}', ' from="bishop"');
  const second = moves('4. Nf3', ' from="quiet"');
  expect(advised(second, first, option)).toEqual(['e4']);
});

test('blocks that start from each other advise nothing that cannot be reached, and end', () => {
  const one = moves('1. e4 {:here[a]}', ' from="b"');
  const other = moves('1... e5 {:here[b]}', ' from="a"');
  expect(advised(one, other)).toEqual([]);
});
