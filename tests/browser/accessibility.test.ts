/**
 * What axe-core cannot see, each by its success criterion in the Web Content Accessibility
 * Guidelines 2.2 (W3C Recommendation). Practice and the set-up board are tested in their own files, and
 * 2.5.8 Target Size on every page in `pages.test.ts`.
 */
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { inSight, onPage, phone, useDemo } from './browser.ts';

const demo = useDemo();

function on(
  address: string,
  use: (page: Page) => Promise<void>,
  options?: BrowserContextOptions,
): Promise<void> {
  return onPage(
    demo().browser,
    async (page) => {
      await page.goto(demo().address + address);
      await use(page);
    },
    options,
  );
}

/** Exercises come live near the window, once all of the text is laid out. */
async function comeTo(page: Page, exercise: Locator): Promise<void> {
  await page.mouse.move(9, 9);
  await page.locator('html:not(.piecemeal)').waitFor();
  await exercise.scrollIntoViewIfNeeded();
}

describe('2.5.7 Dragging Movements: taps do what a drag does', () => {
  test('in an exercise', () =>
    on(
      'isolated-pawn.html',
      async (page) => {
        const exercise = page.locator('.exercise').first();
        await comeTo(page, exercise);
        for (const square of ['c6', 'b4']) {
          await exercise.locator(`.squares [data-square="${square}"]`).tap();
        }
        await expect.poll(() => exercise.locator('[aria-live]').textContent()).toContain('Right.');
      },
      phone,
    ));

  test('in practice', () =>
    on(
      'practice.html',
      async (page) => {
        await page.getByRole('button', { name: 'Begin, with 8 moves' }).tap();
        for (const square of ['d7', 'd5']) {
          await page.locator(`.squares [data-square="${square}"]`).tap();
        }
        await page.getByText('You will be asked for it in a while.').waitFor();
      },
      phone,
    ));

  test('where a board is set up', () =>
    on(
      'search.html',
      async (page) => {
        await page.getByText('Set up a board').tap();
        const board = page.locator('.for-board course-board');
        const king = board.locator('.piece-tray button').first();
        const tap = (square: string) => board.locator(`.squares [data-square="${square}"]`).tap();
        const stands = (square: string) =>
          board.locator(`.pieces [data-square="${square}"]`).count();
        await king.tap();
        await tap('e4');
        await expect.poll(() => stands('e4')).toBe(1);
        // The tray is left; a piece that stands on the board is moved.
        await king.tap();
        await tap('e4');
        await tap('d5');
        await expect.poll(() => stands('d5')).toBe(1);
        expect(await stands('e4')).toBe(0);
      },
      phone,
    ));
});

/** Where the focus came to. */
interface Place {
  readonly name: string;
  /** Whether it had been there before. */
  readonly again: boolean;
  readonly ring: boolean;
  readonly control: boolean;
}

describe('2.1.1 Keyboard, and 2.1.2 No Keyboard Trap', () => {
  for (const [name, control] of Object.entries({
    'search.html': '#page-position',
    'compare.html': 'textarea',
    'practice.html': '.practice button, .practice input',
    'tree.html': '.tree-line a, .tree-line summary, .tree-line button',
    'print.html': '.print-now',
    'index.html': '.chapters a',
    'patterns.html': 'article a, main a',
    'move-orders.html': '.beside button',
  })) {
    test(`Tab comes to what ${name} is for, shows where it is, and leaves the page`, () =>
      on(name, async (page) => {
        await page.locator(control).locator('visible=true').first().waitFor();
        await page.evaluate((selector) => {
          const places: Place[] = [];
          Object.assign(globalThis, { places });
          document.addEventListener('focusin', ({ target }) => {
            if (!(target instanceof Element)) return;
            const { outlineStyle, outlineWidth } = getComputedStyle(target);
            const again = target.hasAttribute('data-was-here');
            target.setAttribute('data-was-here', '');
            const ring = outlineStyle !== 'none' && outlineWidth !== '0px';
            places.push({ name: target.outerHTML, again, ring, control: target.matches(selector) });
          });
        }, control);
        const seen: string[] = [];
        let reached = false;
        let left = false;
        while (!left && seen.length < 2000) {
          // Many at once: to wait for each took longer than all else.
          await Promise.all(Array.from({ length: 25 }, () => page.keyboard.press('Tab')));
          const places = await page.evaluate(() =>
            (globalThis as unknown as { places: Place[] }).places.splice(0),
          );
          for (const here of places) {
            // Past the last one the focus goes to the browser, and then round to the first.
            left = here.again && here.name === seen[0];
            if (left) break;
            expect(here.again, `Tab comes back to ${here.name}`).toBe(false);
            expect(here.ring, `the focus can be seen on ${here.name}`).toBe(true);
            seen.push(here.name);
            reached ||= here.control;
          }
        }
        expect(left, `Tab leaves the page after ${seen.length} places`).toBe(true);
        expect(reached, seen.join('\n')).toBe(true);
      }));
  }
});

test('2.4.11 Focus Not Obscured: on a phone no focused move lies under the board', () =>
  on(
    'isolated-pawn.html#tarrasch',
    async (page) => {
      await page.locator('.beside .board-caption').waitFor();
      await page.locator('#tarrasch').focus();
      let moves = 0;
      for (let count = 0; count < 40; count++) {
        // A block of moves is one stop: arrows go from move to move.
        const away = { 6: 'Tab', 7: 'Shift+Tab' }[count % 8];
        await page.keyboard.press(away ?? 'ArrowRight');
        const move = await page.evaluate(() => document.querySelector('.move:focus')?.id);
        if (move === undefined) continue;
        moves += 1;
        expect(await inSight(page, move), move).toBe(true);
      }
      expect(moves).toBeGreaterThan(10);
    },
    phone,
  ));

describe('4.1.3 Status Messages: said in a region that was there before', () => {
  for (const [what, { address, region, act, says }] of Object.entries({
    'a move that is shown': {
      address: 'isolated-pawn.html#three-nc3',
      region: '.beside [aria-live]',
      act: (page: Page) => page.keyboard.press('ArrowRight'),
      says: 'Black: ',
    },
    'a wrong answer': {
      address: 'isolated-pawn.html',
      region: '.exercise [aria-live]',
      act: async (page: Page) => {
        await page.locator('.exercise').first().getByRole('textbox').fill('Nb5');
        await page.keyboard.press('Enter');
      },
      says: 'not a legal move',
    },
    'a position that is found': {
      address: 'search.html',
      region: 'section:has(.for-position) [role=status]',
      act: async (page: Page) => {
        await page.fill('#page-position', '1.c4 e6 2.d4 d5');
        await page.press('#page-position', 'Enter');
      },
      says: 'The course has this position',
    },
    'games that are compared': {
      address: 'compare.html',
      region: '[role=status]',
      act: async (page: Page) => {
        await page.locator('textarea').fill('1. d4 d5 2. c4 e6 3. Nc3 c5 4. cxd5 exd5 *');
        await page.locator('form button').first().click();
      },
      says: 'compared',
    },
  })) {
    test(what, () =>
      on(address, async (page) => {
        if (region.startsWith('.exercise')) await comeTo(page, page.locator('.exercise').first());
        const before = await page.locator(region).first().elementHandle();
        if (before === null) throw new Error(`no ${region}`);
        expect(await before.textContent()).not.toContain(says);
        await act(page);
        await expect.poll(() => before.textContent()).toContain(says);
        expect(await before.evaluate((element) => element.isConnected)).toBe(true);
      }),
    );
  }
});
