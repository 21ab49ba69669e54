import { mkdtempSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, expect, test } from 'vitest';
import { keepMade } from './keep-made.ts';

const cache = mkdtempSync(path.join(tmpdir(), 'linewright-kept-'));
afterAll(() => rmSync(cache, { recursive: true, force: true }));

let made = 0;
beforeEach(() => {
  made = 0;
});

const get = async (
  edition: string,
  inputs: readonly string[] = [],
  folder = '/course',
  kind = 'a',
) =>
  Buffer.from(
    await keepMade(cache, folder, edition)(kind, inputs, async () => {
      made++;
      return Buffer.from(`made for ${edition} ${inputs.join()}`);
    }),
  ).toString();

test('is made once for the same edition and inputs', async () => {
  expect(await get('1', ['x'])).toBe('made for 1 x');
  expect(await get('1', ['x'])).toBe('made for 1 x');
  expect(made).toBe(1);
  expect(await get('1', ['y'])).toBe('made for 1 y');
  expect(await get('2', ['y'])).toBe('made for 2 y');
  expect(made).toBe(3);
});

test('each course and each kind has one file', async () => {
  rmSync(cache, { recursive: true });
  for (const edition of ['1', '2', '3']) await get(edition);
  expect(readdirSync(cache)).toHaveLength(1);
  await get('3', [], '/other');
  await get('3', [], '/course', 'b');
  expect(readdirSync(cache)).toHaveLength(3);
  expect(made).toBe(5);
});

test('what is damaged, cut short or of another name is made again', async () => {
  rmSync(cache, { recursive: true });
  await get('1');
  await get('1', [], '/other');
  const [one = '', other = ''] = readdirSync(cache).map((name) => path.join(cache, name));
  const whole = readFileSync(one);
  for (const damaged of [
    Buffer.concat([whole, Buffer.from('x')]),
    whole.subarray(0, 40),
    Buffer.alloc(0),
    Buffer.from(whole).fill(0, 0, 1),
  ]) {
    writeFileSync(one, damaged);
    writeFileSync(other, whole);
    made = 0;
    expect(await get('1')).toBe('made for 1 ');
    expect(await get('1', [], '/other')).toBe('made for 1 ');
    expect(made).toBe(2);
  }
});

test('a cache that cannot be written is done without', async () => {
  const file = path.join(cache, 'file');
  writeFileSync(file, '');
  const keep = keepMade(path.join(file, 'cache'), '/course', '1');
  expect(Buffer.from(await keep('a', [], async () => Buffer.from('x'))).toString()).toBe('x');
});
