/** A letter as mail programs with a browser inside show it: on paper and in the dark, wide and narrow. */
import { mkdtempSync, rmSync } from 'node:fs';
import { mkdir, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Browser } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import { makeLetter } from '../../src/publish/index.ts';
import { violations } from './axe.ts';
import { launchBrowser, openPage } from './browser.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-letter-'));
let browser: Browser;

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
  browser = await launchBrowser();
});
afterAll(async () => {
  await browser?.close();
  rmSync(work, { recursive: true, force: true });
});

test.each([
  ['light', 600],
  ['dark', 600],
  ['light', 360],
  ['dark', 360],
] as const)('%s, %i pixels wide', async (colorScheme, width) => {
  const { page, faults } = await openPage(browser, {
    colorScheme,
    viewport: { width, height: 800 },
  });
  await page.goto(pathToFileURL(path.join(work, 'letter.html')).href);
  expect(await page.evaluate(() => document.documentElement.scrollWidth)).toBe(width);
  const boards = await page.locator('img').all();
  expect(boards.length).toBeGreaterThan(1);
  for (const board of boards) {
    const box = await board.boundingBox();
    expect(box?.width).toBe(320);
    expect(box?.height).toBe(320);
    expect(await board.evaluate((image) => (image as HTMLImageElement).naturalWidth)).toBe(640);
  }
  // A letter has no landmarks: mail programs put it into a page of their own.
  const disabled = ['region', 'landmark-one-main'];
  expect(await violations(page, { colorScheme, disabled })).toEqual([]);
  expect(faults.list).toEqual([]);
  await page.context().close();
});
