import { build } from 'esbuild';
import type { BrowserContextOptions, Locator, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { writeWords } from '../../src/contract/index.ts';
import { stringsFor } from '../../src/strings/index.ts';
import { onPage, phone, useDemo } from './browser.ts';

const demo = useDemo();

/** A board that is set up by hand, alone on a page of the course; it begins with two kings. */
async function settingUp(
  use: (board: Locator, placement: () => Promise<string>, page: Page) => Promise<void>,
  options: BrowserContextOptions = {},
): Promise<void> {
  const { outputFiles } = await build({
    stdin: {
      contents: "export { setUpByHand } from './src/browser/board/set-up.ts'",
      resolveDir: process.cwd(),
      loader: 'ts',
    },
    bundle: true,
    format: 'iife',
    globalName: 'hand',
    write: false,
  });
  const strings = stringsFor('en');
  const words = writeWords('setUp', strings);
  await onPage(
    demo().browser,
    async (page) => {
      await page.goto(`${demo().address}isolated-pawn.html`);
      await page.evaluate(`${outputFiles[0]?.text}; window.hand = hand`);
      await page.evaluate((data) => {
        const board = document.createElement('course-board');
        board.dataset.words = data;
        board.dataset.parts = 'turn voice';
        board.id = 'set-up';
        // The tray and the board are in sight together.
        board.style.maxWidth = '26rem';
        document.querySelector('main')?.replaceChildren(board);
        const show = (placement: string) => {
          board.dataset.shown = placement;
          Reflect.get(board, 'show').call(board, { placement, view: 'white', description: '' });
        };
        Reflect.get(window, 'hand').setUpByHand(board);
        board.addEventListener('course-board-edit', (event) =>
          show((event as CustomEvent<{ placement: string }>).detail.placement),
        );
        show('4k3/8/8/8/8/8/8/4K3');
      }, words);
      const board = page.locator('#set-up');
      await use(board, async () => (await board.getAttribute('data-shown')) ?? '', page);
    },
    options,
  );
}

const square = (board: Locator, name: string) => board.locator(`.squares [data-square="${name}"]`);
const tool = (board: Locator, name: string) => board.getByRole('button', { name, exact: true });
const voice = (board: Locator) => board.locator('[aria-live]').textContent();

async function drag(page: Page, from: Locator, to: Locator | { x: number; y: number }) {
  const middle = async (place: Locator | { x: number; y: number }) => {
    if ('x' in place) return place;
    const box = await place.boundingBox();
    if (box === null) throw new Error('nothing there');
    return { x: box.x + box.width / 2, y: box.y + box.height / 2 };
  };
  const [a, b] = [await middle(from), await middle(to)];
  await page.mouse.move(a.x, a.y);
  await page.mouse.down();
  await page.mouse.move((a.x + b.x) / 2, (a.y + b.y) / 2);
  await page.mouse.move(b.x, b.y);
  await page.mouse.up();
}

test('pieces are set, moved and taken off by clicks', () =>
  settingUp(async (board, placement) => {
    await tool(board, 'White pawn').click();
    await square(board, 'e4').click();
    await square(board, 'd4').click();
    expect(await placement()).toBe('4k3/8/8/8/3PP3/8/8/4K3');
    expect(await voice(board)).toBe('d4, White pawn');
    await square(board, 'd4').click();
    expect(await placement()).toBe('4k3/8/8/8/4P3/8/8/4K3');
    expect(await voice(board)).toBe('d4, empty');
    await tool(board, 'Take a piece off').click();
    await square(board, 'e8').click();
    await square(board, 'a8').click();
    expect(await placement()).toBe('8/8/8/8/4P3/8/8/4K3');
    // Without a piece in hand, those on the board are moved.
    await tool(board, 'Take a piece off').click();
    await square(board, 'e1').click();
    expect(await square(board, 'e1').getAttribute('aria-pressed')).toBe('true');
    await square(board, 'e4').click();
    expect(await placement()).toBe('8/8/8/8/4K3/8/8/8');
    await board.getByRole('button', { name: 'Turn the board' }).click();
    await tool(board, 'Black queen').click();
    await square(board, 'h8').click();
    expect(await placement()).toBe('7q/8/8/8/4K3/8/8/8');
  }));

test('drags set pieces, move them, and take them off', () =>
  settingUp(async (board, placement, page) => {
    await drag(page, tool(board, 'Black rook'), square(board, 'a8'));
    expect(await placement()).toBe('r3k3/8/8/8/8/8/8/4K3');
    await drag(page, square(board, 'a8'), square(board, 'd5'));
    expect(await placement()).toBe('4k3/8/8/3r4/8/8/8/4K3');
    expect(await board.locator('.carried-piece').count()).toBe(0);
    await drag(page, square(board, 'd5'), { x: 2, y: 2 });
    expect(await placement()).toBe('4k3/8/8/8/8/8/8/4K3');
    // A drag that ends nowhere sets nothing, and leaves no piece in hand.
    await drag(page, tool(board, 'Black rook'), { x: 2, y: 2 });
    await square(board, 'a1').click();
    expect(await placement()).toBe('4k3/8/8/8/8/8/8/4K3');
  }));

test('everything goes by keys', () =>
  settingUp(async (board, placement, page) => {
    await tool(board, 'White queen').focus();
    await page.keyboard.press('Enter');
    expect(await tool(board, 'White queen').getAttribute('aria-pressed')).toBe('true');
    // Before the tray's first piece lies the one square of 64 that Tab stops at.
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.press('Shift+Tab');
    const focused = () => page.evaluate(() => document.activeElement?.getAttribute('aria-label'));
    expect(await focused()).toBe('a8, empty');
    await page.keyboard.press('ArrowDown');
    await page.keyboard.press('Enter');
    expect(await placement()).toBe('4k3/Q7/8/8/8/8/8/4K3');
    expect(await focused()).toBe('a7, White queen');
    await page.keyboard.press('Escape');
    await page.keyboard.press('Enter');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('Space');
    expect(await placement()).toBe('4k3/1Q6/8/8/8/8/8/4K3');
    await page.keyboard.press('Delete');
    expect(await placement()).toBe('4k3/8/8/8/8/8/8/4K3');
  }));

test('on a phone fingers reach every piece and square', () =>
  settingUp(async (board, placement) => {
    await tool(board, 'Black knight').tap();
    await square(board, 'f6').tap();
    expect(await placement()).toBe('4k3/8/5n2/8/8/8/8/4K3');
    for (const button of await board.locator('.piece-tray button').all()) {
      const box = await button.boundingBox();
      expect(Math.min(box?.width ?? 0, box?.height ?? 0)).toBeGreaterThanOrEqual(44);
    }
  }, phone));
