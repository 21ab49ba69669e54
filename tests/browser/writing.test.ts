/** In `linewright dev` the author writes by playing: what is new on the board goes into the chapter's file. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { request } from 'node:http';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { violations } from './axe.ts';
import { openPage, sharedBrowser } from './browser.ts';

let browser: Browser;
let preview: ChildProcess;
let address: string;
let chapter: string;

const text = `---\ntitle: One\n---\n\n# One\n\n\`\`\`moves\n1. d4 d5 2. c4 e6 {Solid.} 3. Nc3 Nf6 =\n\`\`\`\n`;
const written = () => readFile(chapter, 'utf8');

beforeAll(async () => {
  const folder = await mkdtemp(path.join(inject('runFolder'), 'writing-'));
  chapter = path.join(folder, 'chapters', '1.md');
  await mkdir(path.dirname(chapter));
  await writeFile(path.join(folder, 'course.yaml'), 'title: Small\nid: small\nside: black\n');
  await writeFile(chapter, text);
  preview = spawn(process.execPath, ['dist/cli/main.js', 'dev', folder, '--port', '4290']);
  address = await new Promise((resolve, reject) => {
    let said = '';
    preview.stdout?.on('data', (chunk) => {
      said += chunk;
      const [url] = /http:\S+/.exec(said) ?? [];
      if (url !== undefined) resolve(url);
    });
    preview.on('exit', () => reject(new Error(said)));
  });
  browser = await sharedBrowser();
});
afterAll(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
  const ended = new Promise((resolve) => preview.once('exit', resolve));
  preview.kill();
  await ended;
});

const sheet = (page: Page) => page.locator('.write-sheet');
const status = (page: Page) => sheet(page).locator('.write-status').textContent();

/** Makes a move with the keys alone. */
async function playByKeys(page: Page, from: string, to: string): Promise<void> {
  for (const square of [from, to]) {
    await page.locator(`.beside .squares [data-square="${square}"]`).focus();
    await page.keyboard.press('Enter');
  }
}

test('a line is played in, told what it is, written, and taken back', async () => {
  const { page, faults } = await openPage(browser);
  await page.goto(`${address}1.html`);
  await page.locator('.move').nth(2).click();
  await page.locator('.beside .squares').waitFor();
  await playByKeys(page, 'c7', 'c6');
  await expect.poll(() => sheet(page).textContent()).toContain('line 8. It has 2...e6');
  expect(await page.getByLabel('an alternative to the advice').isChecked()).toBe(true);
  await page.getByLabel('What you say of 2...c6').fill('Holds d5 {and} :end[nothing].');
  await playByKeys(page, 'g1', 'f3');
  await page.getByLabel('What you say of 3.Nf3').waitFor();
  // What is true is offered, of the position on the board.
  await page.getByRole('button', { name: 'queens-off' }).waitFor({ state: 'detached' });
  const claim = sheet(page).locator('.write-claims button').first();
  const claimed = await claim.textContent();
  await claim.click();
  await sheet(page)
    .getByRole('button', { name: /equal position/ })
    .first()
    .click();
  expect(await violations(page)).toEqual([]);
  await page.getByRole('button', { name: 'Write it into the chapter' }).click();
  const line = `( 2... c6 {:option[] Holds d5 {and&#125; \\:end[nothing].} 3. Nf3 = {:claim[${claimed}]} )`;
  const after = text.replace('{Solid.} 3.', `{Solid.}\n  ${line}\n3.`);
  await expect.poll(written).toBe(after);
  // The page shows it, with its board there.
  await expect.poll(() => page.locator('.move').count()).toBe(8);
  await expect.poll(() => page.locator('.board-caption').textContent()).toBe('after 3.Nf3');
  await expect.poll(() => page.locator('.own-way').count()).toBe(0);
  expect(await page.locator('.move[aria-current]').textContent()).toContain('f3');
  await expect.poll(() => status(page)).toBe('Written: chapters/1.md, line 9.');
  await sheet(page).getByText('Take back c6').click();
  await expect.poll(written).toBe(text);
  await expect.poll(() => page.locator('.move').count()).toBe(6);
  await sheet(page).getByText('Make c6').click();
  await expect.poll(written).toBe(after);
  // `dev` gives its address by name.
  expect(faults.list.filter((fault) => !fault.includes(address))).toEqual([]);
  await page.context().close();
});

test('nobody but a page of this process writes', async () => {
  const before = await written();
  const { page } = await openPage(browser);
  await page.goto(`${address}1.html`);
  const token = await page.locator('script[data-token]').first().getAttribute('data-token');
  await page.context().close();
  const { host, origin } = new URL(address);
  const ask = (headers: Readonly<Record<string, string>>) =>
    new Promise<number | undefined>((resolve, reject) => {
      const asking = request(
        `${address}linewright-live/undo`,
        { method: 'POST', headers: { 'content-type': 'application/json', ...headers } },
        (response) => resolve(response.resume().statusCode),
      );
      asking.on('error', reject).end('{}');
    });
  const key = { 'x-linewright-token': token ?? '' };
  expect(await ask({ ...key, host, origin: 'http://elsewhere.example' })).toBe(403);
  expect(await ask({ ...key, host })).toBe(403);
  expect(await ask({ ...key, host: 'elsewhere.example', origin: 'http://elsewhere.example' })).toBe(
    403,
  );
  expect(await ask({ host, origin })).toBe(403);
  expect(await ask({ 'x-linewright-token': 'x', host, origin })).toBe(403);
  expect(await written()).toBe(before);
  // The same request with all that it needs is answered.
  expect(await ask({ ...key, host, origin })).toBe(200);
});

test('no byte of it is in a published site', async () => {
  for (const name of await readdir('dist/assets')) {
    const content = await readFile(path.join('dist/assets', name), 'latin1');
    expect(/write-sheet|Write it into the chapter|x-linewright-token/.test(content), name).toBe(
      false,
    );
  }
});
