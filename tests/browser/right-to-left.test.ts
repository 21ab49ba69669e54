/** A course in Hebrew: its text runs from the right, its moves and boards do not. */
import { cp, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { someOf } from '../setup/runs.ts';
import {
  linewright,
  onPage,
  openWhole,
  pageFiles,
  serveFolder,
  sharedBrowser,
  windows,
} from './browser.ts';

const folder = path.join(inject('runFolder'), 'right-to-left');
const site = path.join(folder, 'site');
let browser: Browser;
let server: Awaited<ReturnType<typeof serveFolder>>;

beforeAll(async () => {
  const course = path.join(folder, 'course');
  await cp('content/starter', course, { recursive: true });
  const settings = path.join(course, 'course.yaml');
  await writeFile(settings, `${await readFile(settings, 'utf8')}\nlanguage: he\n`);
  const chapter = path.join(course, 'chapters/01-the-main-line.md');
  const text = await readFile(chapter, 'utf8');
  await writeFile(chapter, text.replace('The bishop looks at f7', 'הרץ מביט אל f7'));
  await linewright(['build', course, '--out', site]);
  server = await serveFolder(site);
  browser = await sharedBrowser();
});
afterAll(() => server?.close());

function on(
  name: string,
  viewport: { width: number; height: number },
  use: (page: Page) => Promise<void>,
): Promise<void> {
  return onPage(
    browser,
    async (page) => {
      await page.goto(server.address + name);
      await use(page);
    },
    { viewport },
  );
}

const place = async (page: Page, selector: string) =>
  (await page.locator(selector).first().boundingBox()) ?? { x: Number.NaN, y: Number.NaN };
const left = async (page: Page, selector: string) => (await place(page, selector)).x;

test('the text stands at the right, and the board at its left', () =>
  on('the-main-line.html', windows.wide, async (page) => {
    expect(await page.locator('html').getAttribute('dir')).toBe('rtl');
    expect(await left(page, '.beside svg.board')).toBeLessThan(await left(page, 'article p'));
    const gap = await page.evaluate(() => {
      const title = document.querySelector('h1');
      if (title === null) throw new Error('no title');
      const range = document.createRange();
      range.selectNodeContents(title);
      return title.getBoundingClientRect().right - range.getBoundingClientRect().right;
    });
    expect(Math.abs(gap)).toBeLessThan(1);
  }));

test('a1 stays at the left of White, at the bottom', () =>
  on('the-main-line.html', windows.wide, async (page) => {
    await page.locator('.beside course-board .board-caption').waitFor();
    const a1 = await place(page, '.beside [data-square="a1"]');
    expect(a1.x).toBeLessThan(await left(page, '.beside [data-square="h1"]'));
    expect(a1.y).toBeGreaterThan((await place(page, '.beside [data-square="a8"]')).y);
  }));

test('a move with its number, and the moves that follow one another, run from left to right', () =>
  on('the-main-line.html', windows.wide, async (page) => {
    // 1. e4 e5 2. Nf3 Nc6 3. Bc4 stand in one line of the text.
    const ends = await page.evaluate(() =>
      [...document.querySelectorAll('.moves .move')].slice(0, 5).map((move) => {
        const range = document.createRange();
        range.selectNodeContents(move);
        const rects = [...range.getClientRects()];
        const text = document.createTreeWalker(move, NodeFilter.SHOW_TEXT).nextNode();
        if (text === null) throw new Error('a move without text');
        const first = document.createRange();
        first.setStart(text, 0);
        first.setEnd(text, 1);
        return {
          hasNumber: /^\d/.test(move.textContent ?? ''),
          first: first.getBoundingClientRect().left,
          left: Math.min(...rects.map((rect) => rect.left)),
        };
      }),
    );
    expect(ends).toHaveLength(5);
    // Without a number a piece's sign is drawn in place of its letter.
    const numbered = ends.filter(({ hasNumber }) => hasNumber);
    expect(numbered).toHaveLength(3);
    for (const { first, left: start } of numbered) expect(first).toBeCloseTo(start, 0);
    const starts = ends.map(({ left: start }) => start);
    expect(starts).toEqual([...starts].sort((a, b) => a - b));
  }));

test('words that the site has in English alone have their own language and direction', () =>
  on('index.html', windows.wide, async (page) => {
    const minutes = page.getByText('2 minutes', { exact: true }).first();
    await expect
      .poll(() => minutes.evaluate((it) => it.closest('[lang]')?.getAttribute('lang')))
      .toBe('en');
    // Where its first letter stands says how the line runs.
    const [digit, letter] = await minutes.evaluate((it) => {
      const text = document.createTreeWalker(it, NodeFilter.SHOW_TEXT).nextNode();
      if (text === null) throw new Error('no words');
      return [0, 2].map((at) => {
        const range = document.createRange();
        range.setStart(text, at);
        range.setEnd(text, at + 1);
        return range.getBoundingClientRect().left;
      });
    });
    expect(digit).toBeLessThan(letter ?? 0);
    // What a script says later too.
    await page.goto(`${server.address}practice.html`);
    await expect
      .poll(() => page.getByText('moves for you to find').getAttribute('lang'))
      .toBe('en');
  }));

test('in the tree moves run from left to right, and so do the buttons of a board', () =>
  on('tree.html', windows.wide, async (page) => {
    const moves = page.locator('.tree-lines .course-move');
    await moves.first().waitFor();
    const lefts = await moves.evaluateAll((all) =>
      all.slice(0, 3).map((move) => move.getBoundingClientRect().left),
    );
    expect(lefts).toEqual([...lefts].sort((a, b) => a - b));
    expect(await moves.first().evaluate((move) => getComputedStyle(move).direction)).toBe('ltr');
    await page.goto(`${server.address}the-main-line.html`);
    const buttons = page.locator('.beside .board-controls button');
    await buttons.first().waitFor();
    const [back, next] = await buttons.evaluateAll((all) =>
      all.map((button) => button.getBoundingClientRect().left),
    );
    expect(back).toBeLessThan(next ?? 0);
  }));

test('no page is wider than its window, opened on a phone and then made wider', async () => {
  const pages = pageFiles(site);
  expect(pages.length).toBeGreaterThan(8);
  await on('index.html', windows.phone, async (page) => {
    for (const file of someOf(pages, 8)) {
      await page.setViewportSize(windows.phone);
      await openWhole(page, server.address + file);
      for (const name of ['phone', 'tablet', 'wide'] as const) {
        await page.setViewportSize(windows[name]);
        // The frame in which scripts hear of the window, and the one that shows what they do.
        const over = await page.evaluate(async () => {
          for (let frames = 0; frames < 2; frames++) await new Promise(requestAnimationFrame);
          return document.documentElement.scrollWidth - innerWidth;
        });
        expect(over, `${file}, ${name}`).toBe(0);
      }
    }
  });
});
