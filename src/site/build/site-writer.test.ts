import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { siteWriter } from './site-writer.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-writer-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

test('writes files into folders that it makes', async () => {
  const writer = siteWriter(work);
  for (let index = 0; index < 60; index++) {
    await writer.write(`a/b${index % 3}/${index}.txt`, String(index));
  }
  await writer.finish();
  for (let index = 0; index < 60; index++) {
    expect(readFileSync(path.join(work, `a/b${index % 3}/${index}.txt`), 'utf8')).toBe(`${index}`);
  }
});

test('several who write at the same time leave few files waiting', async () => {
  const writer = siteWriter(work);
  let most = 0;
  const fill = async (name: string) => {
    for (let index = 0; index < 100; index++) {
      await writer.write(`${name}-${index}`, 'x');
      const waiting = process.getActiveResourcesInfo().filter((kind) => kind === 'FSReqPromise');
      most = Math.max(most, waiting.length);
    }
  };
  await Promise.all(['c', 'd', 'e', 'f'].map(fill));
  await writer.finish();
  expect(most).toBeLessThan(40);
});

test('what goes wrong with one file is told by the next one, and in the end', async () => {
  writeFileSync(path.join(work, 'file'), '');
  const writer = siteWriter(work);
  const fill = async () => {
    for (let index = 0; index < 60; index++) await writer.write(`file/${index}`, 'x');
  };
  await expect(fill()).rejects.toThrow(/EEXIST|ENOTDIR/);
  await expect(writer.finish()).rejects.toThrow(/EEXIST|ENOTDIR/);
});
