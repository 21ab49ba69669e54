import { mkdtempSync, rmSync, symlinkSync, utimesSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { isStanding, noteStanding } from './index.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-standing-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

test('files stand while nobody writes, removes or replaces one', () => {
  const at = (name: string) => path.join(work, name);
  for (const name of ['a', 'b']) writeFileSync(at(name), name);
  const noted = noteStanding(work, ['a', 'b']);
  if (noted === undefined) throw new Error('nothing was noted');
  expect(isStanding(work, noted)).toBe(true);
  const [, time] = noted.a ?? [0, 0];
  writeFileSync(at('a'), 'longer');
  utimesSync(at('a'), time / 1000, time / 1000);
  expect(isStanding(work, noted)).toBe(false);
  rmSync(at('a'));
  expect(isStanding(work, noted)).toBe(false);
  symlinkSync('b', at('a'));
  expect(noteStanding(work, ['a', 'b'])).toBeUndefined();
});
