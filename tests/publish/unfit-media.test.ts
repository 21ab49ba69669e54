/** What is published of `media/` is looked at again by whoever publishes it. */
import { existsSync, mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { type CheckedCourse, checkCourse } from '../../src/check/index.ts';
import { loadCourse } from '../../src/cli/load-course.ts';
import { buildCourse } from '../../src/model/index.ts';
import { makeBook } from '../../src/publish/book/index.ts';
import { makeLetter } from '../../src/publish/index.ts';
import { findFiles, readCourse } from '../../src/read/index.ts';
import { buildSite } from '../../src/site/index.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'linewright-unfit-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const files = {
  'course.yaml': 'title: A\nid: a\nside: white\n',
  'chapters/1.md': '---\ntitle: One\n---\n\n![x](media/a.gif)\n',
  'news/1.md': '---\ntitle: New\ndate: 2026-11-25\n---\n\n![x](media/b.svg) [y](media/c.pgn)\n',
  'media/a.gif': '<script>1</script>',
  'media/b.svg': '<svg xmlns="http://www.w3.org/2000/svg" onload="a()"/>',
  'media/c.pgn': '<script>1</script>',
  'media/unused.html': '<script>1</script>',
};
let checked: CheckedCourse;

beforeAll(async () => {
  for (const [file, text] of Object.entries(files)) {
    mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
    writeFileSync(path.join(folder, file), text);
  }
  const found = await findFiles(folder, { lookIntoMedia: false });
  const result = checkCourse(buildCourse(readCourse(found)));
  if (!result.checked) throw new Error('only the names of its files were to be looked at');
  checked = result.checked;
});

test('the check names each where it is shown; what nobody shows is not looked for', async () => {
  const { diagnostics, checked: sealed } = await loadCourse(folder);
  expect(sealed).toBeUndefined();
  expect(diagnostics.map(({ rule, place, message }) => [rule, place.file, message])).toEqual([
    ['media-unfit', 'chapters/1.md', expect.stringContaining('a.gif is not published')],
    ['media-unfit', 'news/1.md', expect.stringContaining('b.svg is not published')],
    ['media-unfit', 'news/1.md', expect.stringContaining('c.pgn is not published')],
  ]);
});

test('a site', async () => {
  const out = path.join(folder, 'site');
  await expect(buildSite(checked, { out, folder })).rejects.toThrow('a.gif is not published');
  expect(existsSync(out)).toBe(false);
});

test('a book', async () => {
  await expect(makeBook(checked, { folder, modified: new Date(0) })).rejects.toThrow(
    'a.gif is not published',
  );
});

test('a letter', async () => {
  await expect(
    makeLetter(checked, { chapter: '1' }, { folder, date: new Date(0) }),
  ).rejects.toThrow('a.gif is not published');
});
