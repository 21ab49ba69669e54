import { execFileSync } from 'node:child_process';
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readFileSync,
  renameSync,
  rmSync,
  statSync,
  symlinkSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeEach, describe, expect, test } from 'vitest';
import { copyPlainFile, FileRefusedError, isAt, openPlainFile, readPlainFile } from './index.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-course-files-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

let made = 0;
let course: string;
const at = (name: string) => path.join(course, name);
beforeEach(() => {
  course = path.join(work, String(made++));
  mkdirSync(at('media'), { recursive: true });
  mkdirSync(at('outside'));
  writeFileSync(at('media/a'), 'own');
  writeFileSync(at('outside/a'), 'secret');
});

const read = async (file: string, limit = 100) =>
  Buffer.from((await readPlainFile(course, file, limit)).bytes).toString();
const refused = (file: string) =>
  read(file).then(
    (text) => text,
    (error) => (error instanceof FileRefusedError ? `${error.file}: ${error.message}` : error),
  );

describe('what is read', () => {
  test('a plain file, also of a course that is a link', async () => {
    expect(await read('media/a')).toBe('own');
    symlinkSync(course, `${course}-link`);
    course = `${course}-link`;
    expect(await read('media/a')).toBe('own');
  });

  test('an empty file, and a copy of it', async () => {
    writeFileSync(at('media/empty'), '');
    expect(await read('media/empty')).toBe('');
    await copyPlainFile(course, 'media/empty', at('copies/empty'));
    expect(statSync(at('copies/empty')).size).toBe(0);
  });

  test('no more than the limit and one byte, also where the system tells no size', async () => {
    writeFileSync(at('media/long'), 'x'.repeat(1000));
    expect(await readPlainFile(course, 'media/long', 999)).toMatchObject({ size: 1000 });
    expect((await readPlainFile(course, 'media/long', 1000)).bytes).toHaveLength(1000);
    // This file of Linux has a size of 0, and text.
    if (!existsSync('/proc/self/maps')) return;
    expect(statSync('/proc/self/maps').size).toBe(0);
    expect(await readPlainFile('/proc/self', 'maps', 100)).toMatchObject({ size: 101 });
  });

  test('a file that grows is copied as it was when it was opened', async () => {
    const start = 'x'.repeat(3_000_000);
    writeFileSync(at('media/log'), start);
    const copied = copyPlainFile(course, 'media/log', at('copies/log'));
    const timer = setInterval(() => appendFileSync(at('media/log'), 'more'), 0);
    await copied.finally(() => clearInterval(timer));
    appendFileSync(at('media/log'), 'more');
    const copy = readFileSync(at('copies/log'), 'latin1');
    expect(copy.replace(/(?:more)*$/, '')).toBe(start);
    expect(copy.length).toBeLessThan(statSync(at('media/log')).size);
  });
});

describe('what is refused', () => {
  const link = 'This is a link, and a course is read without following links.';

  test('a link to a file, in a folder, in a circle, to nowhere', async () => {
    symlinkSync(at('outside/a'), at('media/file'));
    symlinkSync(at('outside'), at('media/folder'));
    symlinkSync('circle', at('media/circle'));
    symlinkSync('nowhere', at('media/nowhere'));
    expect(await refused('media/file')).toBe(`media/file: ${link}`);
    expect(await refused('media/folder/a')).toBe(`media/folder/a: ${link}`);
    expect(await refused('media/circle')).toBe(`media/circle: ${link}`);
    expect(await refused('media/nowhere')).toBe(`media/nowhere: ${link}`);
    const copying = copyPlainFile(course, 'media/folder/a', at('copies/a'));
    await expect(copying).rejects.toThrow(FileRefusedError);
    expect(existsSync(at('copies'))).toBe(false);
  });

  test('a pipe, a folder, a file for a folder, and what is not there', async () => {
    execFileSync('mkfifo', [at('media/pipe')]);
    expect(await refused('media/pipe')).toBe('media/pipe: This is a pipe, not a file.');
    expect(await refused('media')).toBe('media: This is a folder where a file should be.');
    expect(await refused('media/a/b')).toMatch(/This is a file where a folder should be/);
    expect(await refused('media/b')).toMatch(/is gone/);
  });

  test('a device', async () => {
    course = '/dev';
    expect(await refused('zero')).toBe('zero: This is a device, not a file.');
  });
});

/** Exchanges files and folders as fast as the system can, in a process of its own. */
function exchange(script: string): () => void {
  const source = `
    const { renameSync, symlinkSync, rmSync } = require('node:fs');
    for (;;) { try { ${script} } catch {} }`;
  const file = at('exchange.cjs');
  writeFileSync(file, source);
  const pid = execFileSync(
    'sh',
    ['-c', `"$0" "$1" >/dev/null 2>&1 & echo $!`, process.execPath, file],
    {
      cwd: course,
      encoding: 'utf8',
    },
  );
  return () => process.kill(Number(pid), 'SIGKILL');
}

describe('nothing from outside is read while the course is changed', () => {
  test.each([
    [
      'a file becomes a link',
      "symlinkSync('../outside/a', 'new'); renameSync('media/a', 'old'); renameSync('new', 'media/a'); renameSync('old', 'media/a')",
    ],
    [
      'a folder becomes a link',
      "renameSync('media', 'old'); symlinkSync('outside', 'media'); rmSync('media'); renameSync('old', 'media')",
    ],
  ])('%s', async (_, script) => {
    const stop = exchange(script);
    const seen = new Map<string, number>();
    try {
      // Until both have been met: on a busy machine the other process may start late.
      const met = () => seen.size > 1 && seen.has('own');
      for (let tries = 0; tries < 1000 || (tries < 100_000 && !met()); tries++) {
        const text = await refused('media/a');
        seen.set(text, (seen.get(text) ?? 0) + 1);
      }
    } finally {
      stop();
    }
    expect([...seen.keys()].filter((text) => text.includes('secret'))).toEqual([]);
    expect(seen.has('own')).toBe(true);
    expect(seen.size).toBeGreaterThan(1);
  });
});

test('an editor that saves by exchanging the file does not disturb', async () => {
  const stop = exchange(
    "require('node:fs').writeFileSync('new', 'own'); renameSync('new', 'media/a'); Atomics.wait(new Int32Array(new SharedArrayBuffer(4)), 0, 0, 1)",
  );
  try {
    for (let tries = 0; tries < 200; tries++) expect(await refused('media/a')).toBe('own');
  } finally {
    stop();
  }
});

test('a handle is at its path only while it is the file there', async () => {
  const handle = await openPlainFile(course, 'media/a');
  expect(await isAt(handle, at('media/a'))).toBe(true);
  renameSync(at('media/a'), at('media/b'));
  writeFileSync(at('media/a'), 'other');
  expect(await isAt(handle, at('media/a'))).toBe(false);
  await handle.close();
});
