/** Which lines the second judge is asked, from build to build. */
import { execFileSync } from 'node:child_process';
import {
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test, vi } from 'vitest';
import { UserError } from '../../diagnostics/index.ts';
import { courseOf } from '../../model/testing/course-of.ts';
import { judgeCourse } from './judge-course.ts';

const work = mkdtempSync(path.join(tmpdir(), 'judge-'));
let folder = '';
afterAll(() => rmSync(work, { recursive: true, force: true }));
beforeEach(() => {
  folder = mkdtempSync(path.join(work, 'cache-'));
});

/** A course of so many different lines, a block each. */
function linesOf(count: number) {
  const replies = ['a6', 'b6', 'c6', 'd6', 'e6', 'f6', 'g6', 'h6', 'a5', 'b5'];
  const seconds = ['a3', 'b3', 'c3', 'd3', 'e3', 'g3', 'h3', 'a4', 'b4', 'c4'];
  const blocks = Array.from(
    { length: count },
    (_, at) => `\`\`\`moves\n1. f3 ${replies[at % 10]} 2. ${seconds[Math.floor(at / 10)]}\n\`\`\``,
  );
  return courseOf(`---\ntitle: One\n---\n\n${blocks.join('\n\n')}\n`);
}

/** Which lines are asked counts here, and not what the second judge says of them: that has tests of its own. */
const findsNothing = async () => undefined;
const judge = (count: number, course = '/course') => {
  const options = { cache: folder, folder: course, print: () => String(count) };
  return judgeCourse(linesOf(count), options, findsNothing);
};
const record = () => path.join(folder, readdirSync(folder)[0] ?? '');

test('new lines are all judged, old ones one in 32, others each time until all were', async () => {
  // Only which lines are asked counts here, and one course is as good as another that is equal.
  const ninety = linesOf(90);
  const ask = () =>
    judgeCourse(ninety, { cache: folder, folder: '/course', print: () => '90' }, findsNothing);
  expect(await ask()).toBe(90);
  let again = 0;
  for (let build = 1; build <= 32; build++) {
    const judged = await ask();
    expect(judged).toBeLessThan(15);
    again += judged;
  }
  expect(again).toBe(90);
  expect(await judge(100)).toBeGreaterThanOrEqual(10);
});

test('the second judge itself finds nothing in lines that can be played', async () => {
  const options = { cache: folder, folder: '/course', print: () => '' };
  expect(await judgeCourse(linesOf(20), options)).toBe(20);
});

test('of two courses with the same title each is known', async () => {
  expect(await judge(20, '/one')).toBe(20);
  expect(await judge(30, '/other')).toBe(30);
  expect(await judge(20, '/one')).toBeLessThan(20);
  expect(readdirSync(folder)).toHaveLength(2);
});

test('what is damaged is judged anew', async () => {
  await judge(20);
  writeFileSync(record(), readFileSync(record(), 'utf8').replace('"builds":1', '"builds":2'));
  expect(await judge(20)).toBe(20);
});

test.each<[string, (file: string) => void]>([
  ['a pipe', (file) => execFileSync('mkfifo', [file])],
  ['a device', (file) => symlinkSync('/dev/zero', file)],
  ['a link', (file) => symlinkSync(path.join(folder, 'precious'), file)],
])('%s in its place is not waited for, nor written through', async (_, make) => {
  await judge(20);
  const file = record();
  rmSync(file);
  writeFileSync(path.join(folder, 'precious'), 'precious');
  make(file);
  expect(await judge(20)).toBe(20);
  expect(readFileSync(path.join(folder, 'precious'), 'utf8')).toBe('precious');
  expect(await judge(20)).toBeLessThan(20);
});

test('a record without the key is none', async () => {
  await judge(20);
  const file = record();
  const text = readFileSync(file, 'utf8');
  vi.stubEnv('LINEWRIGHT_CACHE_KEY', 'secret');
  expect(await judge(20)).toBe(20);
  expect(await judge(20)).toBeLessThan(20);
  vi.unstubAllEnvs();
  writeFileSync(file, text);
  expect(await judge(20)).toBeLessThan(20);
});

test('a folder that cannot be written only costs time', async () => {
  folder = path.join(folder, 'a-file');
  writeFileSync(folder, '');
  expect(await judge(20)).toBe(20);
  expect(await judge(20)).toBe(20);
});

test('a disagreement stops the build and is asked again by the next one', async () => {
  const found = { fen: 'FEN', san: 'a6', verdict: 'is no legal move' };
  const run = judgeCourse(
    linesOf(20),
    { cache: folder, folder: '/course', print: () => '20' },
    async () => found,
  );
  await expect(run).rejects.toThrow(UserError);
  await expect(run).rejects.toThrow('a6 in FEN is no legal move');
  expect(await judge(20)).toBe(20);
});
