/** Several courses as one site: its own pages, which act over all of them. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { darkViolations, violations } from './axe.ts';
import { linewright, onPage, phone, serveFolder, sharedBrowser } from './browser.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'linewright-shelf-'));
let browser: Browser;
let server: Awaited<ReturnType<typeof serveFolder>>;

function write(file: string, ...lines: readonly string[]) {
  mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
  writeFileSync(path.join(folder, file), `${lines.join('\n')}\n`);
}

const chapter = (title: string, ...text: readonly string[]) => [
  ...['---', `title: ${title}`, '---', ''],
  ...text,
];

beforeAll(async () => {
  write(
    'shelf.yaml',
    ...['title: Lantern Street', 'author: Marit Oldenbourg', 'courses: [black, weiss]'],
    'site: https://club.example/',
  );
  const black = { title: 'Against the queen pawn: a plan', side: 'black', id: 'black' };
  write('black/course.yaml', JSON.stringify(black));
  write(
    'black/chapters/1-plan.md',
    ...chapter('The plan', 'The lonely pawn is no weakness here.', ''),
    ...['```moves', '1. d4 d5 {We meet it at once.} 2. c4 e6 {And hold.} 3. Nc3 c5', '```'],
  );
  write('black/translations/de/course.yaml', JSON.stringify({ title: 'Gegen den Damenbauern' }));
  write(
    'black/translations/de/chapters/1-plan.md',
    ...chapter('Der Plan', 'Der einsame Bauer ist hier keine Schwäche.', ''),
    ...['```moves', '1. d4 d5 {Gleich dagegen.} 2. c4 e6 {Und halten.} 3. Nc3 c5', '```'],
  );
  const weiss = { title: 'Der Läufer auf g2', side: 'white', id: 'weiss', language: 'de' };
  write('weiss/course.yaml', JSON.stringify(weiss));
  write(
    'weiss/chapters/1-aufbau.md',
    ...chapter('Der Aufbau', 'Der Läufer wartet.', ''),
    ...['```moves', '1. d4 d5 2. c4 {Das Zentrum.} e6 3. g3 Nf6 4. Bg2', '```'],
  );
  write(
    'weiss/news/2026-11-20.md',
    ...['---', 'title: Der Anfang', 'date: 2026-11-20', '---', '', 'Er ist da.'],
  );
  await linewright(['build', folder, '--out', path.join(folder, 'site')]);
  server = await serveFolder(path.join(folder, 'site'));
  browser = await sharedBrowser();
});
afterAll(async () => {
  await Promise.all(browser.contexts().map((context) => context.close()));
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

const on = (page: string, use: (page: Page) => Promise<void>, options = {}) =>
  onPage(
    browser,
    async (opened) => {
      await opened.goto(server.address + page);
      await use(opened);
    },
    options,
  );

/** As though these moves had been learnt three days ago, and were due today. */
async function learn(page: Page, course: string, moves: Readonly<Record<string, string>>) {
  const today = Math.floor((Date.now() - 4 * 3_600_000) / 86_400_000) - 1;
  const items = Object.entries(moves).map(([key, advice]) => ({
    ...{ key, advice, last: today - 3, due: today, stability: 3, difficulty: 5 },
    ...{ answers: 1, misses: 0, at: Date.now() - 3 * 86_400_000, history: [] },
  }));
  await page.evaluate(
    ([name, kept]) =>
      new Promise<void>((resolve) => {
        const opening = indexedDB.open(name, 1);
        opening.onupgradeneeded = () =>
          opening.result.createObjectStore('items', { keyPath: 'key' });
        opening.onsuccess = () => {
          const writing = opening.result.transaction('items', 'readwrite');
          for (const item of kept) writing.objectStore('items').put(item);
          writing.oncomplete = () => {
            opening.result.close();
            resolve();
          };
        };
      }),
    [`practice:${course}`, items] as const,
  );
}

const answersIn = (page: Page, course: string) =>
  page.evaluate(
    (name) =>
      new Promise<Record<string, number>>((resolve) => {
        const opening = indexedDB.open(name);
        opening.onsuccess = () => {
          const reading = opening.result.transaction('items').objectStore('items').getAll();
          reading.onsuccess = () => {
            opening.result.close();
            resolve(Object.fromEntries(reading.result.map((item) => [item.advice, item.answers])));
          };
        };
      }),
    `practice:${course}`,
  );

const afterD4 = 'rnbqkbnr/pppppppp/8/8/3P4/8/PPP1PPPP/RNBQKBNR b KQkq -';
const afterD5 = 'rnbqkbnr/ppp1pppp/8/3p4/3P4/8/PPP1PPPP/RNBQKBNR w KQkq -';

test('without script every course is reached, each page of a course leads back', async () => {
  await on(
    'index.html',
    async (page) => {
      expect(
        await page
          .locator('.book h2 a')
          .evaluateAll((links) => links.map(({ textContent }) => textContent)),
      ).toEqual(['Against the queen pawn', 'Der Läufer auf g2']);
      expect(await page.locator('.book-cover').nth(1).getAttribute('lang')).toBe('de');
      await page.locator('.book h2 a').nth(1).click();
      await page.waitForURL(/weiss\/index\.html$/);
      await page.locator('.bottom a', { hasText: 'Lantern Street' }).click();
      await page.waitForURL(/index\.html$/);
      await page.goto(`${server.address}search.html`);
      expect(await page.locator('noscript a, main li a').first().getAttribute('href')).toBe(
        'black/search.html',
      );
    },
    { javaScriptEnabled: false },
  );
});

test('what is due in any course is asked in one session, and kept in its own course', () =>
  on('practice.html', async (page) => {
    await page.locator('.practice-today').waitFor();
    expect(await violations(page)).toEqual([]);
    await learn(page, 'black', { [afterD4]: 'd5' });
    await learn(page, 'weiss', { [afterD5]: 'c4' });
    await page.reload();
    await page.getByRole('button', { name: 'Begin, with 2 moves' }).click();
    const board = page.locator('.practice-board svg.board');
    const about = page.locator('.practice-about');
    expect(await board.getAttribute('data-view')).toBe('black');
    expect(await about.textContent()).toBe('Against the queen pawn: The plan');
    const type = async (move: string) => {
      await page.locator('.move-entry input').fill(move);
      await page.keyboard.press('Enter');
    };
    await type('d5');
    await page.getByRole('button', { name: 'Next line' }).click();
    expect(await board.getAttribute('data-view')).toBe('white');
    expect(await about.textContent()).toBe('Der Läufer auf g2: Der Aufbau');
    expect(await page.locator('.practice-status').textContent()).toContain('Der Läufer auf g2. ');
    expect(await violations(page)).toEqual([]);
    await type('e4');
    await page.getByRole('button', { name: 'Show me' }).click();
    expect(await page.locator('.practice-note').getAttribute('lang')).toBe('de');
    await page
      .getByRole('button', { name: 'Go on' })
      .or(page.getByRole('button', { name: 'Next line' }))
      .click();
    await type('c4');
    await page.getByRole('button', { name: 'See how it went' }).click();
    await page.locator('.practice-end').waitFor();
    expect(await page.locator('.practice-card').textContent()).toContain('Der Läufer auf g2');
    expect(await page.locator('.practice-card a').last().getAttribute('href')).toMatch(
      /^weiss\/aufbau\.html#/,
    );
    expect(await answersIn(page, 'black')).toEqual({ d5: 2 });
    expect(await answersIn(page, 'weiss')).toEqual({ c4: 2 });
  }));

test('the first page tells what is due and where one stopped', () =>
  on('index.html', async (page) => {
    expect(await violations(page)).toEqual([]);
    await page.evaluate(
      (today) => {
        const last = { chapter: 'plan', at: '', title: 'The plan' };
        localStorage.setItem('reading:black', JSON.stringify({ last, read: {} }));
        localStorage.setItem('practice:black:forecast', JSON.stringify([[today, 2]]));
      },
      Math.floor(Date.now() / 86_400_000) - 1,
    );
    await page.reload();
    await page.locator('.shelf-due .act').waitFor();
    expect(await page.locator('.shelf-due p').textContent()).toBe(
      '2 moves are due today. All from one course.',
    );
    const links = page.locator('.book').first().locator('.book-standing a');
    expect(await links.evaluateAll((all) => all.map((link) => link.getAttribute('href')))).toEqual([
      'black/plan.html',
      'black/practice.html',
    ]);
    expect(await darkViolations(page)).toEqual([]);
    await page.setViewportSize(phone.viewport ?? { width: 360, height: 740 });
    expect(await page.evaluate(() => document.documentElement.scrollWidth - innerWidth)).toBe(0);
  }));

test('words and positions are found in every course, each told below its course', () =>
  on('search.html', async (page) => {
    const found = page.locator('.found .in-course');
    await page.fill('#page-words', 'Läufer wartet');
    await page.press('#page-words', 'Enter');
    await found.first().waitFor();
    expect(await found.locator('h3').allTextContents()).toEqual(['Der Läufer auf g2']);
    const link = found.locator('.found-part a').first();
    expect(await link.getAttribute('href')).toMatch(/^weiss\/aufbau\.html/);
    await page.fill('#page-words', 'einsame Bauer');
    await page.press('#page-words', 'Enter');
    await expect
      .poll(() => found.locator('h3').allTextContents())
      .toEqual(['Gegen den Damenbauern']);
    expect(await link.getAttribute('href')).toMatch(/^black\/de\/plan\.html/);
    await page.fill('#page-position', '1. d4 d5 2. c4 e6 3. g3');
    await page.press('#page-position', 'Enter');
    await expect
      .poll(() => page.locator('.found').nth(1).locator('h3').allTextContents())
      .toEqual(['Der Läufer auf g2', 'Against the queen pawn: a plan']);
    expect(await violations(page)).toEqual([]);
  }));

test('a game is told with the course that it follows furthest, and where it left it', () =>
  on('compare.html', async (page) => {
    await page.fill('textarea', '[White "A"]\n[Black "B"]\n\n1. d4 d5 2. c4 e6 3. g3 Nf6 4. Nf3 *');
    await page.getByRole('button', { name: 'Compare' }).click();
    const told = page.locator('.games-compared').first().locator('li');
    await told.waitFor();
    expect(await told.textContent()).toContain('Der Läufer auf g2: White leaves the course');
    const links = told.locator('a');
    expect(await links.first().getAttribute('href')).toBe('weiss/index.html');
    const there = await links.nth(1).getAttribute('href');
    expect(await violations(page)).toEqual([]);
    await links.nth(1).click();
    await page.waitForURL(/weiss\/aufbau\.html#/);
    expect(page.url()).toContain(there);
  }));
