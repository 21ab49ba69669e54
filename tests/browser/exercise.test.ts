import type { Browser, Locator, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { demoBase, demoSite, launchBrowser, openPage, serveFolder } from './browser.ts';

let browser: Browser;
let server: { address: string; close: () => void };

beforeAll(async () => {
  browser = await launchBrowser();
  server = await serveFolder(await demoSite(), demoBase);
});
afterAll(async () => {
  await browser.close();
  server.close();
});

/** The first exercise of the course: the queen on a4 is caught by 14...Nb4, seen from Black's side. */
async function solving(use: (exercise: Locator, page: Page) => Promise<void>): Promise<void> {
  const { page, faults } = await openPage(browser);
  try {
    await page.goto(`${server.address}isolated-pawn.html`);
    const exercise = page.locator('.exercise').first();
    await exercise.scrollIntoViewIfNeeded();
    await use(exercise, page);
    expect(faults.list).toEqual([]);
  } finally {
    await page.context().close();
  }
}

/** The middle of a square, reckoned from two pieces that stand on the sixth rank. */
async function middleOf(exercise: Locator, square: string): Promise<{ x: number; y: number }> {
  const c6 = await exercise.locator('[data-square="c6"]').first().boundingBox();
  const f6 = await exercise.locator('[data-square="f6"]').first().boundingBox();
  if (!c6 || !f6) throw new Error('the knights have moved');
  const side = (c6.x - f6.x) / 3;
  const files = 'c'.charCodeAt(0) - square.charCodeAt(0);
  const ranks = Number(square.charAt(1)) - 6;
  return {
    x: c6.x + c6.width / 2 + files * side,
    y: c6.y + c6.height / 2 + ranks * side,
  };
}

async function type(exercise: Locator, move: string): Promise<void> {
  await exercise.getByRole('textbox').fill(move);
  await exercise.getByRole('button', { name: 'Play' }).click();
}

test('typing tells an illegal move, a legal one and the answer apart', () =>
  solving(async (exercise) => {
    const status = exercise.locator('[aria-live]');
    await type(exercise, 'Nb5');
    await expect.poll(() => status.textContent()).toContain('not a legal move');
    await type(exercise, 'a6');
    await expect
      .poll(() => status.textContent())
      .toContain('can be played, but it is not the answer');
    await type(exercise, 'Nb4');
    await expect.poll(() => status.textContent()).toContain('Right.');
  }));

test('two clicks on the board answer', () =>
  solving(async (exercise, page) => {
    for (const square of ['c6', 'b4']) {
      const { x, y } = await middleOf(exercise, square);
      await page.mouse.click(x, y);
    }
    await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('Right.');
  }));

test('dragging the piece answers', () =>
  solving(async (exercise, page) => {
    const [from, to] = [await middleOf(exercise, 'c6'), await middleOf(exercise, 'b4')];
    await page.mouse.move(from.x, from.y);
    await page.mouse.down();
    await page.mouse.move((from.x + to.x) / 2, (from.y + to.y) / 2);
    await page.mouse.move(to.x, to.y);
    await page.mouse.up();
    await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('Right.');
  }));

test('the answer can be asked for', () =>
  solving(async (exercise) => {
    await exercise.getByRole('button', { name: 'Show the answer' }).click();
    await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('The answer:');
  }));
