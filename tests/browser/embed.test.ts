/** Boards on other sites: what the author's page offers to copy works on a page of another origin. */
import { mkdtemp, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Locator } from 'playwright-core';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { openPage, serveFolder, useDemo } from './browser.ts';

const demo = useDemo();
let folder: string;
let other: { address: string; close: () => void };
/** What stands in the boxes of one position, for the address that the course is served at. */
let snippets: { frame: string; picture: string; script: string; element: string };

beforeAll(async () => {
  folder = await mkdtemp(path.join(inject('runFolder'), 'other-site-'));
  other = await serveFolder(folder);
  const { page } = await openPage(demo().browser);
  await page.goto(`${demo().address}boards/list.html`);
  const boxes = page.locator('main details:has(code:text-is("bg5")) .snippet');
  const texts = (await boxes.allTextContents()).map((text) =>
    text.replaceAll('ADDRESS/', demo().address),
  );
  const [frame = '', picture = '', script = '', element = ''] = texts;
  snippets = { frame, picture, script, element };
  await page.context().close();
});
afterAll(() => other?.close());

/** Opens a page of another site; lists what it asked of the course's. */
async function openOther(name: string, html: string, javaScriptEnabled = true, host = other) {
  await writeFile(
    path.join(folder, name),
    `<!doctype html><html lang="en"><title>Other</title><link rel="icon" href="data:,">${html}`,
  );
  const { page, faults } = await openPage(demo().browser, { javaScriptEnabled });
  const asked: string[] = [];
  page.on('request', (request) => {
    if (request.url().startsWith(demo().address)) {
      asked.push(request.url().slice(demo().address.length));
    } else if (!request.url().startsWith(host.address) && !request.url().startsWith('data:')) {
      asked.push(request.url());
    }
  });
  await page.goto(host.address + name);
  return { page, faults, asked };
}

/** Of the picture itself, in pixels, once it is there. */
function loadedWidth(image: Locator): Promise<number> {
  return image.evaluate(async (element: HTMLImageElement) => {
    await element.decode();
    return element.naturalWidth;
  });
}

test('in a frame: a line to step through, and the way into the course', async () => {
  const { page, faults, asked } = await openOther('frame.html', snippets.frame);
  const board = page.frameLocator('iframe').locator('course-board');
  const caption = board.locator('.board-caption');
  expect(await caption.textContent()).toBe('after 6...Be7');
  const bishop = board.locator('.pieces [data-square="e7"]');
  expect(await bishop.getAttribute('href')).toBe('#piece-bb');
  await board.getByRole('button', { name: 'Forward', exact: true }).click();
  expect(await caption.textContent()).toBe('after 7.Bxe7');
  expect(await bishop.getAttribute('href')).toBe('#piece-wb');
  expect(await board.locator('.turn-words').textContent()).toBe('Black to move');
  await page.keyboard.press('ArrowLeft');
  expect(await caption.textContent()).toBe('after 6...Be7');

  // All of it is seen in the size that the snippet gives the frame.
  const frame = page.frames().find((part) => part !== page.mainFrame());
  const [needs, has] = (await frame?.evaluate(() => [
    document.documentElement.scrollHeight,
    innerHeight,
  ])) ?? [1, 0];
  expect(needs).toBeLessThanOrEqual(has ?? 0);
  expect(asked.sort()).toEqual([
    expect.stringMatching(/^assets\/embed\.\w+\.css$/),
    'boards/bg5.html',
    'boards/board.js',
  ]);
  await board.getByRole('link', { name: 'Open in the course' }).click();
  await page.waitForURL(`${demo().address}other-answers.html#bg5`);
  expect(faults.list).toEqual([]);
});

test('without a script the frame shows the picture', async () => {
  const { page, asked } = await openOther('still.html', snippets.frame, false);
  const image = page.frameLocator('iframe').locator('img');
  expect(await loadedWidth(image)).toBe(560);
  expect(await image.getAttribute('alt')).toMatch(/^White: king e1, .* White to move\.$/);
  expect(asked).toContain('images/positions/bg5.png');
});

test('a picture with a link', async () => {
  const { page, faults } = await openOther('picture.html', snippets.picture);
  const image = page.locator('img');
  expect(await loadedWidth(image)).toBe(560);
  await page.locator('a').click();
  await page.waitForURL(`${demo().address}other-answers.html#bg5`);
  expect(faults.list).toEqual([]);
});

test('as an element: the style of the other page does not reach it, and it asks for nothing', async () => {
  const hostile =
    '<style>html{font-size:40px}*{color:red!important;letter-spacing:9px;line-height:4;' +
    'text-transform:uppercase}svg,button,p{display:none!important}</style>';
  const both = `${snippets.script}${snippets.element}`;
  const { page, faults, asked } = await openOther('element.html', hostile + both);
  const board = page.locator('course-board');
  const caption = board.locator('.board-caption');
  expect(await caption.textContent()).toBe('after 6...Be7');
  const style = await caption.evaluate((element) => {
    const { color, letterSpacing, textTransform, fontSize } = getComputedStyle(element);
    return { color, letterSpacing, textTransform, fontSize };
  });
  expect(style).toEqual({
    color: 'rgb(29, 27, 24)',
    letterSpacing: 'normal',
    textTransform: 'none',
    fontSize: '16px',
  });
  await board.getByRole('button', { name: 'Forward', exact: true }).click();
  expect(await caption.textContent()).toBe('after 7.Bxe7');
  expect(await board.locator('svg.board').evaluate((svg) => svg.clientWidth)).toBeGreaterThan(300);
  expect(asked.filter((path) => !path.startsWith('images/'))).toEqual(['boards/board.js']);
  expect(faults.list).toEqual([]);
});

// Trusted Types (W3C): a page may take markup from policies that it names, or from none.
test('as an element of a page that takes no markup from scripts', async () => {
  const both = `${snippets.script}${snippets.element}`;
  const strict = "require-trusted-types-for 'script'";
  const under = (policy: string) => serveFolder(folder, '/', { 'content-security-policy': policy });
  for (const policy of [strict, `${strict}; trusted-types course-board`]) {
    const host = await under(policy);
    const { page, faults } = await openOther('trusted.html', both, true, host);
    const board = page.locator('course-board');
    await board.getByRole('button', { name: 'Forward', exact: true }).click();
    expect(await board.locator('.board-caption').textContent()).toBe('after 7.Bxe7');
    expect(await board.locator('.pieces [data-square="e7"]').getAttribute('href')).toBe(
      '#piece-wb',
    );
    expect(faults.list).toEqual([]);
    host.close();
  }
  const host = await under(`${strict}; trusted-types 'none'`);
  const { page } = await openOther('refused.html', both, true, host);
  await page.waitForFunction(() => customElements.get('course-board') !== undefined);
  const image = page.locator('course-board a img');
  expect(await loadedWidth(image)).toBe(560);
  expect(await image.boundingBox()).toMatchObject({ width: 400, height: 400 });
  host.close();
});

test('every position has its page and its picture', async () => {
  const { page, faults } = await openPage(demo().browser);
  await page.goto(`${demo().address}boards/list.html`);
  expect(await page.locator('meta[name="robots"]').getAttribute('content')).toBe('noindex');
  const pages = await page
    .locator('main details a')
    .evaluateAll((links) => links.map((link) => (link as HTMLAnchorElement).href));
  expect(pages.length).toBeGreaterThan(50);
  for (const address of [pages[0], pages.at(-1)]) {
    await page.goto(address ?? '');
    expect(await page.locator('.turn-words').textContent()).toMatch(/ to move$/);
  }
  expect(faults.list).toEqual([]);
});
