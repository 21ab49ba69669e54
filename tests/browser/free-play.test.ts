import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { violations } from './axe.ts';
import { goBack, openPage, phone, useDemo } from './browser.ts';

const demo = useDemo();

const caption = (page: Page) => page.locator('.board-caption').textContent();
const said = (page: Page) => page.locator('.own-said').textContent();
const line = (page: Page) => page.locator('.own-moves').textContent();

/** The middle of a square of the board beside the text, in the window. */
async function middleOf(page: Page, square: string): Promise<{ x: number; y: number }> {
  const board = page.locator('.beside svg.board');
  const box = await board.boundingBox();
  if (box === null) throw new Error('there is no board');
  const isTurned = (await board.getAttribute('data-view')) === 'black';
  const [file, rank] = ['abcdefgh'.indexOf(square.charAt(0)), Number(square.charAt(1)) - 1];
  const [x, y] = isTurned ? [7 - file, rank] : [file, 7 - rank];
  const unit = box.width / 87.5;
  return { x: box.x + (6 + x * 10 + 5) * unit, y: box.y + (1.5 + y * 10 + 5) * unit };
}

async function drag(page: Page, from: string, to: string, button: 'left' | 'right' = 'left') {
  const [start, end] = [await middleOf(page, from), await middleOf(page, to)];
  await page.mouse.move(start.x, start.y);
  await page.mouse.down({ button });
  await page.mouse.move((start.x + end.x) / 2, (start.y + end.y) / 2);
  await page.mouse.move(end.x, end.y);
  await page.mouse.up({ button });
}

test('a reader plays on the board, is answered, keeps notes and drawings, and goes back', async () => {
  const { page, faults } = await openPage(demo().browser);
  await page.goto(`${demo().address}isolated-pawn.html#tarrasch`);
  await expect.poll(() => caption(page)).toBe('after 3...c5');
  // Known moves go on in the text: the first act brings what plays them.
  await drag(page, 'c4', 'd5');
  await expect.poll(() => caption(page)).toBe('after 4.cxd5');
  expect(await page.locator('.move[aria-current]').count()).toBe(1);
  await drag(page, 'e6', 'd5');
  await expect.poll(() => caption(page)).toBe('after 4...exd5');
  await drag(page, 'g1', 'f3');
  await expect.poll(() => caption(page)).toBe('after 5.Nf3');
  // One that it does not know is the reader's own.
  await drag(page, 'g8', 'f6');
  await expect.poll(() => line(page)).toBe('5...Nf6');
  await expect.poll(() => said(page)).toMatch(/does not speak of 5\.\.\.Nf6.*it plays 5\.\.\.Nc6/);
  await drag(page, 'c1', 'c3');
  await expect.poll(() => said(page)).toBe('Its own knight stands on c3.');
  // By typing, and with the keys.
  await page.getByRole('button', { name: 'Play and note' }).click();
  await page.getByLabel('Your move').fill('Bg5');
  await page.keyboard.press('Enter');
  await expect.poll(() => line(page)).toBe('5...Nf6 6.Bg5');
  await page.getByRole('button', { name: 'Take back' }).click();
  await expect.poll(() => caption(page)).toBe('after 5...Nf6');
  await page.locator('.squares [data-square="c1"]').focus();
  await page.keyboard.press('Enter');
  await page.locator('.squares [data-square="f4"]').focus();
  await page.keyboard.press('Enter');
  await expect.poll(() => line(page)).toBe('5...Nf6 6.Bf4');
  // Notes, bookmarks and drawings are kept at the position.
  await drag(page, 'f3', 'e5', 'right');
  await expect.poll(() => said(page)).toContain('Your arrow from f3 to e5.');
  await page.getByRole('button', { name: 'Bookmark' }).click();
  await page.getByRole('button', { name: 'Note', exact: true }).click();
  await page.getByLabel('Your note on the position after 6.Bf4').fill('Mind e5.');
  expect(await violations(page, { within: '.beside' })).toEqual([]);
  await page.getByRole('button', { name: 'Back to the text' }).click();
  await expect.poll(() => caption(page)).toBe('after 5.Nf3');
  await page.reload();
  await page.getByRole('button', { name: 'Play and note' }).click();
  await page.getByLabel('Your move').fill('Nf6');
  await page.keyboard.press('Enter');
  await page.getByLabel('Your move').fill('Bf4');
  await page.keyboard.press('Enter');
  await expect.poll(() => page.locator('.own-note-text').textContent()).toBe('Mind e5.');
  expect(await page.locator('.own-over path').count()).toBe(2);
  // All of them on a page, each with the way back: through the reader's own moves too.
  await page.getByRole('link', { name: 'All your notes' }).click();
  await page.getByRole('heading', { name: 'In lines of your own' }).waitFor();
  expect(await page.locator('.own-note-text').textContent()).toBe('Mind e5.');
  expect(await violations(page)).toEqual([]);
  await page.getByRole('link', { name: 'after 6.Bf4' }).click();
  await expect.poll(() => line(page)).toBe('5...Nf6 6.Bf4');
  await goBack(page);
  const download = page.waitForEvent('download');
  await page.getByRole('button', { name: 'Save to a file' }).click();
  const file = await (await download).path();
  await page.getByRole('button', { name: /^Delete/ }).click();
  await expect.poll(() => page.locator('.own-card').count()).toBe(0);
  await page.getByRole('button', { name: 'Undo' }).click();
  await expect.poll(() => page.locator('.own-card').count()).toBe(1);
  await page.getByRole('button', { name: /^Delete/ }).click();
  await page.locator('input[type=file]').setInputFiles(file);
  await expect.poll(() => page.locator('.own-card').count()).toBe(1);
  expect(faults.list).toEqual([]);
  await page.context().close();
});

test('a finger whose first tap brings what plays loses no tap, also from a folder', async () => {
  const { page } = await openPage(demo().browser, phone);
  const file = pathToFileURL(path.join(demo().site, 'isolated-pawn.html'));
  await page.goto(`${file}#tarrasch`);
  await expect.poll(() => caption(page)).toBe('after 3...c5');
  const [from, to] = [await middleOf(page, 'c4'), await middleOf(page, 'd5')];
  await page.touchscreen.tap(from.x, from.y);
  await page.touchscreen.tap(to.x, to.y);
  await expect.poll(() => caption(page)).toBe('after 4.cxd5');
  // There is no room for it below the board.
  expect(await page.locator('.share').isVisible()).toBe(false);
  await page.locator('.board-own').tap();
  await page.getByRole('button', { name: 'Share this position' }).tap();
  await page.getByRole('dialog').getByRole('textbox').waitFor();
  expect(await page.getByRole('dialog').getByRole('textbox').inputValue()).toMatch(
    /^rnbqkbnr\/pp3ppp\/4p3\/2pP4/,
  );
  await page.context().close();
});
