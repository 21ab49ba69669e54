import type { Browser, BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { demoBase, demoSite, launchBrowser, openPage, serveFolder, windows } from './browser.ts';

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

/** Runs `use` on a page of the course, and expects no fault on it. */
async function reading(
  address: string,
  use: (page: Page) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const { page, faults } = await openPage(browser, options);
  try {
    await page.goto(server.address + address);
    await page.locator('course-board svg.board').waitFor();
    await use(page);
    expect(faults.list).toEqual([]);
  } finally {
    await page.context().close();
  }
}

const phone: BrowserContextOptions = { viewport: windows.phone, hasTouch: true, isMobile: true };

/** The caption under the board: `after 3...c5`. */
const caption = (page: Page) => page.locator('.board-caption').textContent();
/** The piece on a square as the board draws it, such as `black-pawn`. */
const pieceOn = (page: Page, square: string) =>
  page
    .locator(`course-board .pieces [data-square="${square}"]`)
    .getAttribute('href', { timeout: 1000 });
const currentMoves = (page: Page) => page.locator('.move[aria-current]').allTextContents();
const settled = (page: Page) => page.waitForTimeout(350);

/** Whether a move's link can be seen: in the window, and not under the board. */
function inSight(page: Page, id: string): Promise<boolean> {
  return page.evaluate((name) => {
    const link = document.getElementById(name);
    if (link === null) return false;
    const { left, top, bottom } = link.getBoundingClientRect();
    const at = document.elementFromPoint(left + 2, (top + bottom) / 2);
    return at !== null && (link === at || link.contains(at));
  }, id);
}

describe('the address', () => {
  for (const [name, options] of Object.entries({
    'a wide window': { viewport: windows.wide },
    'a tablet': { viewport: windows.tablet },
    'a phone': phone,
  })) {
    test(`of a named position shows it, in ${name}`, () =>
      reading(
        'isolated-pawn.html#tarrasch',
        async (page) => {
          await settled(page);
          expect(await caption(page)).toBe('after 3...c5');
          expect(await currentMoves(page)).toEqual(['c5']);
          expect(await inSight(page, 'tarrasch')).toBe(true);
        },
        options,
      ));
  }
});
