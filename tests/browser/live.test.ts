/** `linewright dev`: what changes on the disk comes to the page, what is wrong is marked there, what is the reader's stays. */
import { type ChildProcess, spawn } from 'node:child_process';
import { mkdir, mkdtemp, readFile, rename, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Browser, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { violations } from './axe.ts';
import { openPage, sharedBrowser } from './browser.ts';

let browser: Browser;
let preview: ChildProcess;
let address: string;
let folder: string;
let chapter: string;
/** One for all tests. */
let page: Page;

const fence = '```';
const settings = 'title: Small\nid: small\nside: white\n';
const text = (moves: string) => `---\ntitle: One\n---\n\n${fence}moves\n${moves}\n${fence}\n`;

/** A chapter to read in: what changes between two editions are these words. */
const long = ({ lead = 'Lead', comment = 'Quiet.', ask = 'Which move?', late = 'Late' } = {}) =>
  `---
title: One
---

${lead}

${fence}moves
1. e4 e5 2. Nf3 {${comment}} Nc6 3. Bb5 {:here[spanish]} a6 =
${fence}

${'Words to read, and more of them than a window holds. '.repeat(40)}

<details><summary>More</summary>Hidden words</details>

${fence}exercise at="spanish" before="3... a6"
ask: The first question
answer: 4. Ba4
hint: It stays on its diagonal.
${fence}

${fence}exercise at="spanish" before="3... Nf6"
ask: ${ask}
answer: 4. O-O
hint: The king.
${fence}

${'Other words to read. '.repeat(60)}

${late} words.
`;

beforeAll(async () => {
  folder = await mkdtemp(path.join(inject('runFolder'), 'live-'));
  chapter = path.join(folder, 'chapters', '1.md');
  await mkdir(path.dirname(chapter));
  // It begins with settings that cannot be used.
  await writeFile(path.join(folder, 'course.yaml'), 'title: [Small\n');
  await writeFile(chapter, text('1. e4 e5 2. Nf3'));
  const editor = path.join(folder, 'editor.cjs');
  await writeFile(
    editor,
    'require("fs").writeFileSync(__dirname + "/opened.txt", process.argv.slice(2).join())',
  );
  preview = spawn(process.execPath, [
    'dist/cli/main.js',
    'dev',
    folder,
    '--port',
    '4280',
    '--editor',
    `"${process.execPath}" "${editor}" {file} {line}`,
  ]);
  address = await new Promise((resolve, reject) => {
    let said = '';
    preview.stdout?.on('data', (chunk) => {
      said += chunk;
      const [url] = /http:\S+/.exec(said) ?? [];
      if (url !== undefined) resolve(url);
    });
    preview.stderr?.on('data', (chunk) => {
      said += chunk;
    });
    preview.on('exit', () => reject(new Error(said)));
  });
  browser = await sharedBrowser();
  ({ page } = await openPage(browser));
  await page.goto(`${address}1.html`);
});
afterAll(async () => {
  await page?.context().close();
  const ended = new Promise((resolve) => preview.once('exit', resolve));
  preview.kill();
  await ended;
});

const lastMove = () => page.locator('.moves > p > .move').last();
const notes = () => page.locator('.desk-note');
const slip = () => page.getByRole('complementary', { name: 'Findings' });
/** Saves the chapter and waits until the page has these words. */
async function save(written: string, shows: string): Promise<void> {
  await writeFile(chapter, written);
  await expect.poll(() => page.locator('body').textContent()).toContain(shows);
}

test('a course that starts broken says where and what to do, and comes alive when it is mended', async () => {
  await page.getByRole('heading', { name: 'Nothing to show yet' }).waitFor();
  await slip().getByText('course.yaml').first().waitFor();
  expect(await slip().textContent()).toMatch(/bracket is opened and never closed.*line 2/);
  await writeFile(path.join(folder, 'course.yaml'), settings);
  await expect.poll(() => lastMove().textContent()).toContain('Nf3');
  expect(await slip().count()).toBe(0);
});

test('a change is shown; what is wrong is marked, told in a list, and led to; the rest is current', async () => {
  await save(text('1. e4 e5 2. Bc4'), 'Bc4');
  expect(await notes().count()).toBe(0);

  await save(text('1. e4 e5 2. Ke3 {A new word.}'), 'A new word.');
  await notes().waitFor();
  expect(await notes().textContent()).toContain('2.Ke3 cannot be played');
  expect(await page.locator('.fault.desk-at').textContent()).toBe('Ke3');
  const tab = slip().getByRole('button', { name: '1 error' });
  await expect.poll(() => page.getByRole('status').allTextContents()).toContain('1 error.');
  await tab.click();
  expect(await violations(page)).toEqual([]);
  await slip().getByRole('button', { name: 'Open' }).click();
  await expect
    .poll(() => readFile(path.join(folder, 'opened.txt'), 'utf8').catch(() => ''))
    .toBe(`${chapter},6`);
  await slip().getByRole('link').click();
  expect(await page.evaluate(() => document.activeElement?.className)).toContain('desk-note');
  await page.keyboard.press('Escape');
  await tab.press('Escape');
  expect(await tab.getAttribute('aria-expanded')).toBe('false');

  await save(text('1. e4 e5 2. Ke2'), 'Ke2');
  await expect.poll(() => notes().count()).toBe(0);
  expect(await slip().count()).toBe(0);
});

describe('what is the reader’s stays', () => {
  const isKept = () => page.evaluate(() => 'isKept' in globalThis);
  const caption = () => page.locator('.board-line a').textContent();
  const focused = () =>
    page.evaluate(() => {
      const element = document.activeElement as HTMLElement | null;
      const around = element?.closest('.exercise')?.getAttribute('aria-label') ?? '';
      return `${around} ${element?.dataset.square ?? element?.textContent}`.trim();
    });

  test('the line that is read keeps its height, what is selected stays selected', async () => {
    await save(long(), 'The first question');
    // A page that is loaded anew would have lost this.
    await page.evaluate(() => Object.assign(globalThis, { isKept: true }));
    const fold = page.getByText('More', { exact: true });
    await fold.scrollIntoViewIfNeeded();
    await page.evaluate(() => {
      const words = document.querySelector('article > details');
      if (words) getSelection()?.selectAllChildren(words);
    });
    const before = await fold.evaluate((each) => each.getBoundingClientRect().top);
    await save(long({ lead: `A longer lead. ${'More words. '.repeat(60)}` }), 'A longer lead.');
    const after = await fold.evaluate((each) => each.getBoundingClientRect().top);
    expect(Math.abs(after - before)).toBeLessThan(2);
    expect(await page.evaluate(() => getSelection()?.toString())).toContain('More');
    expect(await isKept()).toBe(true);
  });

  test('the position on the board, and the side that it is seen from', async () => {
    await page.locator('#spanish').click();
    await page.locator('.board-turn').click();
    expect(await caption()).toContain('Bb5');
    await save(long({ comment: 'Louder.' }), 'Louder.');
    expect(await caption()).toContain('Bb5');
    expect(await page.locator('.board-turn').getAttribute('aria-pressed')).toBe('true');
    await page.locator('.board-turn').click();
    // The board goes on from there in the new text.
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(caption).toContain('Nf3');
    expect(await page.locator('.board-comment').textContent()).toContain('Louder.');
  });

  test('the focus: on a move, on a square of the board', async () => {
    await page.locator('#spanish').focus();
    await save(long({ comment: 'Quieter.' }), 'Quieter.');
    expect(await focused()).toContain('b5');
    await page.locator('.beside .board-stand').hover();
    await page.locator('.beside button[data-square="g1"]').focus();
    await save(long({ comment: 'Quiet again.' }), 'Quiet again.');
    expect(await focused()).toBe('g1');
  });

  test('a line of his own on the board', async () => {
    await page.locator('#spanish').click();
    await page.locator('.beside button[data-square="h7"]').click();
    await page.locator('.beside button[data-square="h5"]').click();
    await expect.poll(() => page.locator('.own-moves').textContent()).toContain('h5');
    await save(long({ comment: 'And again.' }), 'And again.');
    expect(await page.locator('.own-moves').textContent()).toContain('h5');
    await page.locator('#spanish').click();
  });

  test('opened folds, hints and answers, and an exercise that is being solved', async () => {
    const [first, second] = [page.locator('.exercise').first(), page.locator('.exercise').last()];
    await page.getByText('More', { exact: true }).click();
    await first.scrollIntoViewIfNeeded();
    await first.locator('.squares').waitFor();
    await first.locator('details.hint summary').click();
    await second.locator('details.hint summary').click();
    await first.locator('button[data-square="b5"]').click();
    await first.locator('button[data-square="a4"]').click();
    const talk = await first.textContent();
    await save(long({ ask: 'Which one?' }), 'Which one?');
    expect(await page.locator('article > details').getAttribute('open')).toBe('');
    expect(await first.textContent()).toBe(talk);
    expect(await first.locator('details.hint').getAttribute('open')).toBe('');
    // The one that changed begins anew, with its folds as they were.
    expect(await second.locator('details.hint').getAttribute('open')).toBe('');
    await second.locator('.squares').waitFor();
    await second.locator('button[data-square="e1"]').focus();
    await save(long({ ask: 'Which move now?' }), 'Which move now?');
    await expect.poll(focused).toBe('Exercise 2 e1');
    expect(await isKept()).toBe(true);
  });

  test('the list of findings, open as it was; what is far away does not stir', async () => {
    await save(long({ comment: 'Odd. :claim[mate]' }), 'Odd.');
    await slip().getByRole('button', { name: '1 error' }).click();
    await page.evaluate(() => {
      const seen: string[] = [];
      Object.assign(globalThis, { seen });
      // What scripts do within an exercise is theirs; one that is replaced is a change of the article.
      const isTheirs = (target: Node) =>
        !target.isConnected || (target instanceof Element && target.closest('.exercise'));
      const note = (list: MutationRecord[]) => {
        for (const { target } of list) if (!isTheirs(target)) seen.push(target.nodeName);
      };
      new MutationObserver(note).observe(document.querySelector('article') as Element, {
        childList: true,
        characterData: true,
        subtree: true,
      });
    });
    await save(long({ comment: 'Odd. :claim[mate]', late: 'Very late' }), 'Very late');
    await slip().getByRole('link').first().waitFor();
    const seen = await page.evaluate(() => (globalThis as unknown as { seen: string[] }).seen);
    expect([...new Set(seen)]).toEqual(['#text']);
    await save(long(), 'Late');
    expect(await isKept()).toBe(true);
  });
});

test('a file that gets another name is told on its page, and followed when it is back', async () => {
  await save(text('1. e4 e5 2. d4'), 'd4');
  // Other words of the page say d4 too.
  await expect.poll(() => lastMove().textContent()).toContain('d4');
  const other = path.join(folder, 'chapters', '2.md');
  await rename(chapter, other);
  await slip().getByText('no longer in the course').waitFor();
  expect(await lastMove().textContent()).toContain('d4');
  await rename(other, chapter);
  await expect.poll(() => slip().count()).toBe(0);
  await save(text('1. e4 e5 2. d3'), 'd3');
});

test('the chapters, then the whole course, are moved away and come back', async () => {
  const away = async (of: string, said: string, fresh: string) => {
    await rename(of, `${folder}-aside`);
    await expect.poll(() => slip().textContent()).toContain(said);
    await expect.poll(() => lastMove().count()).toBeGreaterThan(0);
    const inside = path.relative(of, chapter);
    await writeFile(path.join(`${folder}-aside`, inside), text(`1. e4 e5 2. ${fresh}`));
    await rename(`${folder}-aside`, of);
    await expect.poll(() => lastMove().textContent()).toContain(fresh);
    expect(await slip().count()).toBe(0);
  };
  await away(path.dirname(chapter), 'The course has no chapters to show.', 'Nc3');
  await away(folder, 'follow the course again when it is back', 'Bb5');
  // What is saved after that is followed as before.
  await writeFile(chapter, text('1. e4 e5 2. Qe2'));
  await expect.poll(() => lastMove().textContent()).toContain('Qe2');
});

test('a translation has pages of its own, with what its translator can mend, and follows his files', async () => {
  await save(text('1. e4 e5 2. Nf3 {Quiet.}'), 'Quiet.');
  const own = path.join(folder, 'translations', 'de', 'chapters', '1.md');
  await mkdir(path.dirname(own), { recursive: true });
  await writeFile(own, text('1. e4 e5 2. Nf3 {(en) Quiet.}'));
  await page.getByRole('link', { name: 'Deutsch' }).click();
  await page.waitForURL(({ pathname }) => pathname === '/de/1.html');
  await page.getByText('waits for a translation').first().waitFor();
  await page.getByRole('button', { name: 'Open' }).first().click();
  await expect.poll(() => readFile(path.join(folder, 'opened.txt'), 'utf8')).toMatch(/de\S+1\.md,/);
  await writeFile(own, text('1. e4 e5 2. Nf3 {Ruhig.}'));
  await expect.poll(() => page.locator('body').textContent()).toContain('Ruhig.');
  expect(await page.locator('html').getAttribute('lang')).toBe('de');
  await page.getByRole('link', { name: 'English' }).click();
  await page.waitForURL(({ pathname }) => pathname === '/1.html');
});
