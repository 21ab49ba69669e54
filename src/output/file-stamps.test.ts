import { mkdtempSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { areUnchanged, takeStamps } from './index.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-standing-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

test('files stand while nobody writes, removes or replaces one', () => {
  const at = (name: string) => path.join(work, name);
  for (const name of ['a', 'b']) writeFileSync(at(name), name);
  const noted = takeStamps(work, ['a', 'b']);
  if (noted === undefined) throw new Error('nothing was noted');
  expect(areUnchanged(work, noted)).toBe(true);
  const [, time] = noted.a ?? [0, 0];
  writeFileSync(at('a'), 'longer');
  utimesSync(at('a'), time / 1000, time / 1000);
  expect(areUnchanged(work, noted)).toBe(false);
  rmSync(at('a'));
  expect(areUnchanged(work, noted)).toBe(false);
  symlinkSync('b', at('a'));
  expect(takeStamps(work, ['a', 'b'])).toBeUndefined();
});
