/** A bounded slice of the fuzzer; the command goes on: npm run fuzz -- --minutes 10 */
import { mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, describe, expect, test } from 'vitest';
import { runs } from '../setup/runs.ts';
import { Bench } from './bench.ts';
import type { FuzzCase } from './case.ts';
import { makeCase } from './make/make-case.ts';
import { minimise } from './minimise.ts';
import { runFuzzer } from './run-fuzzer.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-fuzz-'));
/** Loading all that cases are tried with takes seconds: once for all. */
const bench = new Bench();
afterAll(async () => {
  await bench.close();
  rmSync(work, { recursive: true, force: true });
});

async function fuzz(...args: readonly string[]) {
  const lines: string[] = [];
  const status = await runFuzzer(args, { bench, print: (line) => lines.push(line) });
  return { said: lines.join('\n'), status };
}

/** Never fewer: the handbook promises them. */
const cases = Math.max(50, runs(50));

test('50 courses, folders and PGN files keep every promise', { timeout: 900_000 }, async () => {
  const out = path.join(work, 'failures');
  const { said, status } = await fuzz('--seed', '1', '--cases', String(cases), '--out', out);
  expect(said).toMatch(/^Seed 1\./);
  expect(said).toMatch(new RegExp(`\n${cases.toLocaleString('en')} cases, 0 failures$`));
  expect(status).toBe(0);
});

test('a case is the same for its seed and number, and no other', () => {
  expect(makeCase(5, 3)).toEqual(makeCase(5, 3));
  expect(makeCase(5, 4)).not.toEqual(makeCase(5, 3));
  expect(makeCase(6, 3)).not.toEqual(makeCase(5, 3));
  const targets = Array.from({ length: 60 }, (_, number) => makeCase(1, number).target);
  expect(new Set(targets)).toEqual(new Set(['course', 'folder', 'archive']));
});

test('a saved case is replayed', async () => {
  const file = path.join(work, 'case.json');
  writeFileSync(file, JSON.stringify({ target: 'course', files: { 'course.yaml': 'title: T\n' } }));
  const { said, status } = await fuzz('--replay', file);
  expect(said).toContain('--- course.yaml');
  expect(said).toContain('It holds now.');
  expect(status).toBe(0);
  expect(readdirSync(work)).toContain('case.json');
});

test('a failing case is made small: files, lines and words that do not matter go', async () => {
  const start: FuzzCase = {
    target: 'course',
    files: { a: 'one\ntwo words here\nthree\n', b: 'four\n', c: 'five needle six\n' },
  };
  const fails = async ({ files }: FuzzCase) =>
    Object.values(files).some((text) => text.includes('needle')) && 'c' in files;
  expect((await minimise(start, fails)).files).toEqual({ c: 'needle' });
});

describe('a case that does not come back', () => {
  const script = new URL('./testing/hanging-worker.ts', import.meta.url);
  const course = (files: FuzzCase['files']): FuzzCase => ({ target: 'course', files });

  test('has failed, and the next one is tried', async () => {
    const bench = new Bench(script);
    const hung = await bench.try(course({ hang: '' }), 0.5);
    expect(hung.failures).toMatchObject([
      { oracle: 'comes back', message: expect.stringMatching(/^takes/) },
    ]);
    expect((await bench.try(course({}))).failures).toEqual([]);
    const thrown = await bench.try(course({ throw: '' }));
    expect(thrown.failures).toMatchObject([{ message: expect.stringContaining('too deep') }]);
    const ended = await bench.try(course({ exit: '' }));
    expect(ended.failures).toMatchObject([{ oracle: 'comes back' }]);
    expect((await bench.try(course({}))).failures).toEqual([]);
    await bench.close();
  });
});
