import { existsSync, mkdirSync, mkdtempSync, readdirSync, rmSync, writeFileSync } from 'node:fs';
import { writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { makeNewFolder } from './index.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-new-folder-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));
const write = (folder: string) => writeFile(path.join(folder, 'a.md'), 'text');

test.each(['fresh', 'below/another', 'empty'])('%s is made', async (name) => {
  const folder = path.join(work, name);
  if (name === 'empty') mkdirSync(folder);
  await makeNewFolder(folder, write);
  expect(readdirSync(folder)).toEqual(['a.md']);
});

test('what fails on the way leaves nothing', async () => {
  const folder = path.join(work, 'half');
  const fill = async (into: string) => {
    await write(into);
    throw new Error('no more');
  };
  await expect(makeNewFolder(folder, fill)).rejects.toThrow('no more');
  expect(existsSync(folder)).toBe(false);
});

test('a folder that came to hold something meanwhile stays as it is', async () => {
  const folder = path.join(work, 'theirs');
  const fill = async (into: string) => {
    await write(into);
    mkdirSync(folder);
    writeFileSync(path.join(folder, 'b.md'), 'theirs');
  };
  await expect(makeNewFolder(folder, fill)).rejects.toThrow('ENOTEMPTY');
  expect(readdirSync(folder)).toEqual(['b.md']);
});
