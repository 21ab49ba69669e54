/** A letter as mail programs with a browser inside show it: on paper and in the dark, wide and narrow. */
import { mkdtempSync, rmSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import { makeLetter } from '../../src/publish/index.ts';
import { violationsInBoth } from './axe.ts';
import { openPage, sharedBrowser } from './browser.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-letter-'));

beforeAll(async () => {
  const { checked } = await loadCourse('demo-course');
  if (!checked) throw new Error('the example course has errors');
  const choice = { chapter: '1', section: 'What the pawn gives, and what it costs' };
  const { html, pictures } = await makeLetter(checked, choice, {
    folder: 'demo-course',
    date: new Date(0),
    site: 'https://club.example',
    cacheDir: path.join(inject('runFolder'), 'cache'),
  });
  await mkdir(path.join(work, 'images'));
  await writeFile(path.join(work, 'letter.html'), html);
  for (const [name, { bytes }] of pictures) await writeFile(path.join(work, name), bytes);
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

test.each([600, 360])('in light and in the dark, %i pixels wide', async (width) => {
  const { page, faults } = await openPage(await sharedBrowser(), {
    viewport: { width, height: 800 },
  });
  await page.goto(pathToFileURL(path.join(work, 'letter.html')).href);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  const boards = await page.locator('img').evaluateAll((images) =>
    (images as HTMLImageElement[]).map((image) => {
      const { width, height } = image.getBoundingClientRect();
      return { width, height, pixels: image.naturalWidth };
    }),
  );
  expect(boards.length).toBeGreaterThan(1);
  expect(boards).toEqual(boards.map(() => ({ width: 320, height: 320, pixels: 640 })));
  // A letter has no landmarks: mail programs put it into a page of their own.
  const disabled = ['region', 'landmark-one-main'];
  expect(await violationsInBoth(page, { disabled })).toEqual([]);
  expect(faults.list).toEqual([]);
  await page.context().close();
});
