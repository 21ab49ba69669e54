import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { BrowserContextOptions, Page } from 'playwright-core';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { addressAfter } from '../../src/contract/testing/address-after.ts';
import {
  type Faults,
  goBack,
  inSight,
  onPage,
  openPage,
  phone,
  useDemo,
  windows,
} from './browser.ts';

const demo = useDemo();

/** Runs `use` on a page of the course, and expects no fault on it. */
function reading(
  address: string,
  use: (page: Page) => Promise<void>,
  options?: BrowserContextOptions,
): Promise<void> {
  return onPage(
    demo().browser,
    async (page) => {
      await page.goto(demo().address + address);
      await page.locator('.beside svg.board').waitFor();
      await use(page);
    },
    options,
  );
}

/** The caption under the board: `after 3...c5`. */
const caption = (page: Page) => page.locator('.board-caption').textContent();
const currentMoves = (page: Page) => page.locator('.move[aria-current]').allTextContents();
const hash = (page: Page) => new URL(page.url()).hash;
/**
 * Waits until the page has not scrolled for so many frames. Playwright cancels a touch that misses what it was to tap,
 * which Chromium warns of while a scroll goes on; our own listeners of touches are passive.
 */
const atRest = (page: Page, calm = 10) =>
  page.evaluate(
    (enough) =>
      new Promise<void>((resolve) => {
        let frames = 0;
        let last = scrollY;
        const look = () => {
          frames = scrollY === last ? frames + 1 : 0;
          last = scrollY;
          if (frames < enough) requestAnimationFrame(look);
          else resolve();
        };
        look();
      }),
    calm,
  );

/** The page has followed its scrolling, and noted its address: by its own clock, which stands still where it does. */
async function settled(page: Page): Promise<void> {
  await atRest(page);
  // `address.ts` waits for 200.
  await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 210)));
}

const unnamed = addressAfter('d4 d5 c4 e6 Nc3 c5 cxd5 cxd4 Qxd4 Nc6');
const otherWay = addressAfter('d4 d5 c4 e6 Nc3 c5 e3 Nf6 Nf3 Nc6 cxd5 exd5');
const named = addressAfter('d4 d5 c4 e6 Nc3 c5 cxd5 exd5 Nf3 Nc6 Bg5 Be7');

/** What the board draws on a square, such as `#piece-bp`; undefined for an empty one. */
function pieceOn(page: Page, square: string): Promise<string | undefined> {
  return page.evaluate((name) => {
    const piece = document.querySelector(`.beside .pieces [data-square="${name}"]`);
    return piece?.getAttribute('href') ?? undefined;
  }, square);
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
          await expect.poll(() => caption(page)).toBe('after 3...c5');
          expect(await currentMoves(page)).toEqual(['c5']);
          expect(await inSight(page, 'tarrasch')).toBe(true);
          await page.mouse.move(100, 400);
          await page.mouse.wheel(0, 1500);
          await expect.poll(() => caption(page)).not.toBe('after 3...c5');
        },
        options,
      ));
  }

  test('of a move without a name shows it', () =>
    reading(`isolated-pawn.html#${unnamed}`, async (page) => {
      await settled(page);
      await expect.poll(() => caption(page)).toBe('after 5...Nc6');
      // In a flex box the words around a figurine would be columns beside it.
      const line = page.locator('.board-caption');
      expect(await line.evaluate((each) => getComputedStyle(each).display)).toBe('block');
      expect(await inSight(page, unnamed)).toBe(true);
    }));

  test('that a chapter links to opens the position there, and Back returns', () =>
    reading('isolated-pawn.html', async (page) => {
      await page.locator('#tarrasch').click();
      const link = page.getByRole('link', { name: 'a chapter of their own' });
      // On the way to the link the board may follow the text: Back returns to what it showed there.
      await link.hover();
      await settled(page);
      const left = await caption(page);
      await link.click();
      await page.waitForURL(/other-answers\.html#quiet-e3$/);
      await settled(page);
      expect(await currentMoves(page)).toHaveLength(1);
      expect(await page.locator('.move[aria-current]').getAttribute('id')).toBe('quiet-e3');
      await goBack(page);
      await page.waitForURL(/isolated-pawn\.html/);
      await settled(page);
      await expect.poll(() => hash(page)).toBe('#tarrasch');
      await expect.poll(() => caption(page)).toBe(left);
    }));

  test('of the list of named positions leads to each', () =>
    reading('isolated-pawn.html', async (page) => {
      await page.getByRole('link', { name: 'Positions' }).click();
      await page.locator('a[href="isolated-pawn.html#tarrasch"]').first().click();
      await settled(page);
      await expect.poll(() => caption(page)).toBe('after 3...c5');
    }));
});

/** This Chromium keeps no page to come back to: it loads the one that was left anew. */
describe('the reading place', () => {
  test('is kept where Back comes from another chapter, also when it was reached by scrolling', () =>
    reading('isolated-pawn.html', async (page) => {
      await page.locator('#tarrasch').click();
      await page.mouse.move(300, 400);
      await page.mouse.wheel(0, 2600);
      await expect.poll(() => caption(page)).not.toBe('after 3...c5');
      await settled(page);
      const place = async () => [await caption(page), await page.evaluate(() => scrollY)];
      const left = await place();
      await page.locator('a[rel="next"]').evaluate((link: HTMLElement) => link.click());
      await page.waitForURL(/other-answers/);
      await goBack(page);
      await page.waitForURL(/isolated-pawn\.html#tarrasch$/);
      await expect.poll(place).toEqual(left);
      // From here the board follows the text again.
      await page.mouse.wheel(0, -2000);
      await expect.poll(() => caption(page)).not.toBe(left[0]);
    }));

  test('is kept by a jump within the text and back', () =>
    reading(`other-answers.html#${otherWay}`, async (page) => {
      await settled(page);
      const also = page.locator('.board-also');
      expect(await also.textContent()).toBe('also reached: after 6...Nf6, after 6...exd5');
      await also.getByRole('link', { name: 'after 6...Nf6' }).click();
      await expect.poll(() => caption(page)).toBe('after 6...Nf6');
      await expect.poll(() => hash(page)).toBe('#quiet-e3');
      expect(await inSight(page, 'quiet-e3')).toBe(true);
      await page.goBack();
      await expect.poll(() => caption(page)).toBe('after 6...Nc6');
    }));
});

test('where move orders meet the board leads to the other chapter', () =>
  reading(`move-orders.html#${addressAfter('d4 d5 c4 e6 Nc3')}`, async (page) => {
    const also = page.locator('.board-also').getByRole('link');
    expect(await also.textContent()).toBe('after 3.Nc3 in “The pawn on d5”');
    // Beginnings that lines share are no meeting.
    await page.keyboard.press('ArrowLeft');
    await page.keyboard.press('ArrowLeft');
    expect(await page.locator('.board-also').textContent()).toBe('');
    await page.keyboard.press('ArrowRight');
    await page.keyboard.press('ArrowRight');
    await also.click();
    await page.waitForURL(/isolated-pawn\.html#three-nc3$/);
    await expect.poll(() => caption(page)).toBe('after 3.Nc3');
  }));

/** One page for these, which need no other state than the one before leaves. */
describe('on one page', () => {
  let page: Page;
  let faults: Faults;
  beforeAll(async () => {
    ({ page, faults } = await openPage(demo().browser));
    await page.goto(`${demo().address}isolated-pawn.html#three-nc3`);
    await page.locator('.beside svg.board').waitFor();
  });
  afterAll(async () => {
    await page.context().close();
    expect(faults.list).toEqual([]);
  });

  test('a step is told to readers who do not see the board', async () => {
    await page.keyboard.press('ArrowRight');
    const live = page.locator('.beside [aria-live]');
    expect(await live.textContent()).toMatch(/^Black: pawn to c5\. The Tarrasch\. Where/);
    const label = await page.locator('.beside svg.board').getAttribute('aria-label');
    expect(label).toContain('after 3...c5');
    expect(label).toContain('king e8');
    expect(label).toContain('White to move.');
    await page.keyboard.press('ArrowLeft');
    await expect.poll(() => caption(page)).toBe('after 3.Nc3');
  });

  test('the buttons step, take branches and turn the board', async () => {
    const board = page.locator('.beside course-board');
    await board.getByRole('button', { name: '3...Nf6' }).click();
    await expect.poll(() => caption(page)).toBe('after 3...Nf6');
    await board.getByRole('button', { name: 'Back' }).click();
    await expect.poll(() => caption(page)).toBe('after 3.Nc3');
    // On takes the way that one came back from.
    await board.getByRole('button', { name: 'Forward' }).click();
    await expect.poll(() => caption(page)).toBe('after 3...Nf6');
    expect(await board.getByRole('button', { name: 'Forward' }).getAttribute('aria-disabled')).toBe(
      'true',
    );
    const view = () => board.locator('svg.board').getAttribute('data-view');
    expect(await view()).toBe('black');
    await board.getByRole('button', { name: 'Turn' }).click();
    expect(await view()).toBe('white');
    await board.getByRole('button', { name: 'Back' }).click();
    expect(await view()).toBe('white');
    await expect.poll(() => pieceOn(page, 'e1')).toBe('#piece-wk');
  });

  test('everything that acts can be reached and is named', async () => {
    const board = page.locator('.beside course-board');
    for (const name of ['Back', 'Forward', 'Turn the board']) {
      const button = board.getByRole('button', { name });
      await button.focus();
      await page.keyboard.press('Enter');
      expect(await button.evaluate((element) => element === document.activeElement)).toBe(true);
    }
  });

  test('a click on a move shows it, and notes it in the address', async () => {
    await expect.poll(() => pieceOn(page, 'c5')).toBeUndefined();
    await page.locator('#tarrasch').click();
    await expect.poll(() => pieceOn(page, 'c5')).toBe('#piece-bp');
    await expect.poll(() => pieceOn(page, 'c7')).toBeUndefined();
    await expect.poll(() => hash(page)).toBe('#tarrasch');
  });

  test('a click on a move in the prose shows it, and Back returns', async () => {
    await page.locator('#ed').click();
    const link = page.locator('a.prose-move[href="#tarrasch"]').first();
    // On the way to the link the board may follow the text: Back returns to what it showed there.
    await link.hover();
    await settled(page);
    const left = await caption(page);
    expect(left).not.toBe('after 3...c5');
    await link.click();
    await expect.poll(() => caption(page)).toBe('after 3...c5');
    await expect.poll(() => hash(page)).toBe('#tarrasch');
    await page.goBack();
    await settled(page);
    await expect.poll(() => caption(page)).toBe(left);
    await page.goForward();
    await settled(page);
    await expect.poll(() => caption(page)).toBe('after 3...c5');
  });

  test('the board follows the paragraph that is read', async () => {
    const passed = new Set<string>();
    await page.evaluate(() => scrollTo(0, 0));
    await page.mouse.move(300, 400);
    for (let scrolls = 0; scrolls < 12; scrolls++) {
      const before = await page.evaluate(() => scrollY);
      await page.mouse.wheel(0, 400);
      await page.waitForFunction((y) => scrollY !== y, before);
      await atRest(page, 3);
      passed.add((await caption(page)) ?? '');
    }
    expect(passed.size).toBeGreaterThan(5);
  });
});

describe('with the keyboard', () => {
  test('arrows step from anywhere; on a move the others act too', () =>
    reading('isolated-pawn.html', async (page) => {
      await page.keyboard.press('ArrowRight');
      await expect.poll(() => caption(page)).toBe('after 1.d4');
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowLeft');
      await expect.poll(() => caption(page)).toBe('after 1.d4');

      await page.locator('#tarrasch').focus();
      await page.keyboard.press('Enter');
      await expect.poll(() => caption(page)).toBe('after 3...c5');
      await page.keyboard.press('ArrowDown');
      await expect.poll(() => caption(page)).toBe('after 3...Nf6');
      await page.keyboard.press('ArrowUp');
      await expect.poll(() => caption(page)).toBe('after 3...c5');
      await page.keyboard.press('End');
      await settled(page);
      await expect.poll(() => caption(page)).toBe('after 8...O-O');
      expect(await inSight(page, 'tabiya')).toBe(true);
      await page.keyboard.press('Home');
      await settled(page);
      await expect.poll(() => caption(page)).toBe('at the start');
    }));
});

describe('on a phone', () => {
  for (const [name, viewport] of Object.entries({
    upright: windows.phone,
    lying: { width: 740, height: 360 },
  })) {
    test(`a tap shows the move, ${name}`, () =>
      reading(
        'isolated-pawn.html',
        async (page) => {
          await page.locator('#tarrasch').tap();
          await settled(page);
          await expect.poll(() => caption(page)).toBe('after 3...c5');
          await expect.poll(() => pieceOn(page, 'c5')).toBe('#piece-bp');
          const board = await page.locator('.beside svg.board').boundingBox();
          expect(board?.y).toBeGreaterThanOrEqual(0);
          expect((board?.y ?? 0) + (board?.height ?? 0)).toBeLessThanOrEqual(viewport.height);
        },
        { ...phone, viewport },
      ));
  }

  test('the board folds away, stays so in the next chapter, and comes back', () =>
    reading(
      'isolated-pawn.html',
      async (page) => {
        const drawn = page.locator('.beside svg.board');
        await page.getByRole('button', { name: 'Fold the board away' }).tap();
        expect(await drawn.isVisible()).toBe(false);
        await page.locator('a[rel="next"]').tap();
        await page.waitForURL(/other-answers/);
        expect(await drawn.isVisible()).toBe(false);
        await page.getByRole('button', { name: 'Show the board' }).tap();
        expect(await drawn.isVisible()).toBe(true);
      },
      phone,
    ));

  test('stepping through moves does not move the text that is read', () =>
    reading(
      'isolated-pawn.html#queens-gambit',
      async (page) => {
        await settled(page);
        const top = () =>
          page.locator('#queens-gambit').evaluate((move) => move.getBoundingClientRect().top);
        const before = await top();
        for (let steps = 0; steps < 2; steps++) {
          await page.getByRole('button', { name: 'Forward' }).tap();
          await settled(page);
          expect(Math.abs((await top()) - before)).toBeLessThan(1);
        }
      },
      phone,
    ));
});

test('on a phone a finger that goes across the board steps; up and down it scrolls the page', () =>
  reading(
    'isolated-pawn.html#three-nc3',
    async (page) => {
      await settled(page);
      const touch = await page.context().newCDPSession(page);
      const box = await page.locator('.beside svg.board').boundingBox();
      if (box === null) throw new Error('there is no board');
      const middle = { x: box.x + box.width / 2, y: box.y + box.height / 2 };
      const slide = async (dx: number, dy: number) => {
        const at = (part: number) => [{ x: middle.x + dx * part, y: middle.y + dy * part }];
        await touch.send('Input.dispatchTouchEvent', { type: 'touchStart', touchPoints: at(0) });
        for (const part of [0.25, 0.5, 0.75, 1]) {
          const touchPoints = at(part);
          await touch.send('Input.dispatchTouchEvent', { type: 'touchMove', touchPoints });
        }
        await touch.send('Input.dispatchTouchEvent', { type: 'touchEnd', touchPoints: [] });
      };
      await slide(-90, 8);
      await expect.poll(() => caption(page)).toBe('after 3...c5');
      expect(await page.locator('.beside [aria-live]').textContent()).toMatch(
        /^Black: pawn to c5\./,
      );
      await slide(90, -8);
      await expect.poll(() => caption(page)).toBe('after 3.Nc3');
      const before = await page.evaluate(() => scrollY);
      await slide(10, -80);
      await expect.poll(() => page.evaluate(() => scrollY)).toBeGreaterThan(before);
      await atRest(page);
      // WCAG 2.2, 2.5.7 and 2.5.1: what the finger's way does the buttons do, at 44 pixels each. What is done on
      // the squares, which are as large as the board lets them be, can be typed too.
      await page.locator('#three-nc3').tap();
      for (const control of await page
        .locator('.beside :is(button:not(.squares *), a):visible')
        .all()) {
        const size = await control.boundingBox();
        const name = await control.textContent();
        expect(size?.height, name ?? '').toBeGreaterThanOrEqual(44);
        if (name !== null) expect(size?.width, name).toBeGreaterThanOrEqual(44);
      }
    },
    phone,
  ));

test('nothing moves when the board comes alive', async () => {
  for (const viewport of [windows.wide, windows.phone]) {
    const { page } = await openPage(demo().browser, { viewport });
    // How far a late font moves lines depends on the fonts of the machine.
    await page.route('**/*.woff2', (route) => route.abort());
    await page.addInitScript(() => {
      const shifts: number[] = [];
      Object.assign(window, { shifts });
      new PerformanceObserver((list) => {
        for (const entry of list.getEntries()) {
          if ('value' in entry) shifts.push(Number(entry.value));
        }
      }).observe({ type: 'layout-shift', buffered: true });
    });
    await page.goto(`${demo().address}isolated-pawn.html`);
    await page.locator('.board-step').first().waitFor();
    await settled(page);
    expect(await page.evaluate(() => Reflect.get(window, 'shifts'))).toEqual([]);
    await page.context().close();
  }
});

/** How many pieces of the text are laid out, and where those near the window stand. */
function laidOut(page: Page): Promise<{ readonly all: boolean; readonly tops: number[] }> {
  return page.evaluate(() => {
    const blocks = [...document.querySelectorAll('article > *, article .moves > *')];
    const there = blocks.filter((block) => block.checkVisibility({ contentVisibilityAuto: true }));
    return {
      all: document.querySelector('.piecemeal') === null,
      tops: there
        .filter((block) =>
          block.firstElementChild?.checkVisibility({ contentVisibilityAuto: true }),
        )
        .map((block) => Math.round(block.getBoundingClientRect().top + scrollY)),
    };
  });
}

/** Runs `use` on a page that is not idle until it is let. */
function whileBusy(
  use: (page: Page, letIdle: () => Promise<void>) => Promise<void>,
  options?: BrowserContextOptions,
): Promise<void> {
  return onPage(
    demo().browser,
    async (page) => {
      await page.addInitScript(() => {
        const idle = window.requestIdleCallback.bind(window);
        const held: IdleRequestCallback[] = [];
        window.requestIdleCallback = (task) => held.push(task);
        Reflect.set(window, 'letIdle', () => {
          window.requestIdleCallback = idle;
          for (const task of held.splice(0)) idle(task);
        });
      });
      await page.goto(`${demo().address}isolated-pawn.html`);
      await use(page, () => page.evaluate('letIdle()'));
    },
    options,
  );
}

describe('the address of what the chapter has no more', () => {
  const notice = (page: Page) => page.locator('.notice');

  for (const [name, options] of Object.entries({
    'a wide window': { viewport: windows.wide },
    'a phone': phone,
  })) {
    test(`is told, and the board shows the position that is most like it, in ${name}`, () =>
      reading(
        `isolated-pawn.html#${addressAfter('d4 d5 c4 e6 Nc3 c5 cxd5 cxd4 Qxd4 Nc6 Qe3')}`,
        async (page) => {
          await expect.poll(() => caption(page)).toBe('after 5...Nc6');
          await expect.poll(() => inSight(page, unnamed)).toBe(true);
          expect(await notice(page).textContent()).toContain(
            'is not in this chapter any more. The board shows the one that is most like it: after 5...Nc6.',
          );
          await page.getByRole('button', { name: 'Close' }).click();
          await expect.poll(() => notice(page).count()).toBe(0);
        },
        options,
      ));
  }

  test('leads to the chapter that has the position, or the name, now', async () => {
    for (const [address, there] of [
      [`isolated-pawn.html#${otherWay}`, 'other-answers.html#quiet-e3'],
      ['isolated-pawn.html#quiet-e3', 'other-answers.html#quiet-e3'],
    ] as const) {
      await reading(address, async (page) => {
        await notice(page).getByRole('link', { name: 'White has other ideas' }).click();
        await page.waitForURL(new RegExp(`${there}$`));
        await expect.poll(() => notice(page).count()).toBe(0);
      });
    }
  });

  test('is told on a page that was opened from a folder', async () => {
    const { page } = await openPage(demo().browser);
    await page.goto(`${pathToFileURL(path.join(demo().site, 'isolated-pawn.html'))}#quiet-e3`);
    await notice(page).getByRole('link').waitFor();
    await page.context().close();
  });

  test('as it was written in earlier editions leads to its move', () =>
    reading('isolated-pawn.html#b1-5b-Nc6', async (page) => {
      await expect.poll(() => caption(page)).toBe('after 5...Nc6');
      expect(await notice(page).count()).toBe(0);
      expect(await inSight(page, unnamed)).toBe(true);
    }));

  test('of a position that has been given a name leads to it', () =>
    reading(`other-answers.html#${named}`, async (page) => {
      await expect.poll(() => caption(page)).toBe('after 6...Be7');
      expect(await notice(page).count()).toBe(0);
      expect(await inSight(page, 'bg5')).toBe(true);
    }));
});

describe('far text waits', () => {
  const wayOut: Readonly<
    Record<string, (page: Page, letIdle: () => Promise<void>) => Promise<unknown>>
  > = {
    'for the reader’s first act': (page) => page.mouse.move(20, 20),
    'until the page is idle': async (page, letIdle) => {
      await letIdle();
      await page.locator('html:not(.piecemeal)').waitFor();
    },
  };
  for (const [name, comesOut] of Object.entries(wayOut)) {
    test(`${name}, and then nothing moves`, async () => {
      const viewports = [windows.wide, windows.phone, { width: 1000, height: 3000 }];
      // At once: each waits until its page has come up.
      const seen = viewports.map((viewport) =>
        whileBusy(
          async (page, letIdle) => {
            const before = await laidOut(page);
            expect(before.all).toBe(false);
            expect(before.tops.length).toBeGreaterThan(5);
            // As the browser sends it when a page comes to lie under a pointer that rests.
            await page.evaluate(() => dispatchEvent(new PointerEvent('pointermove')));
            expect((await laidOut(page)).all).toBe(false);
            await comesOut(page, letIdle);
            const after = await laidOut(page);
            expect(after.all).toBe(true);
            expect(after.tops.length).toBeGreaterThan(before.tops.length);
            const inWindow = before.tops.filter((top) => top < viewport.height);
            expect(after.tops.slice(0, inWindow.length)).toEqual(inWindow);
            await page.mouse.move(40, 40);
            expect(await laidOut(page)).toEqual(after);
          },
          { viewport },
        ),
      );
      await Promise.all(seen);
    });
  }
});

test('all of the text is laid out at once for a place in it, and on the way back', async () => {
  await reading('isolated-pawn.html#tabiya', async (page) => {
    expect((await laidOut(page)).all).toBe(true);
  });
  await whileBusy(async (page) => {
    expect((await laidOut(page)).all).toBe(false);
    await page.reload();
    expect((await laidOut(page)).all).toBe(true);
  });
});

describe('before the page has been idle', () => {
  const acts: Readonly<Record<string, (page: Page) => Promise<void>>> = {
    'a key': (page) => page.keyboard.press('ArrowRight'),
    // By the program: a hand that moves to it gives the page time.
    'a touched move': (page) => page.locator('.move').first().dispatchEvent('click'),
  };
  for (const [name, act] of Object.entries(acts)) {
    test(`${name} is not lost`, () =>
      whileBusy(async (page) => {
        expect(await caption(page)).not.toBe('at the start');
        await act(page);
        await expect.poll(() => caption(page)).toBe('after 1.d4');
      }));
  }
});

test('sections, diagrams and the board share every window', () =>
  reading('isolated-pawn.html', async (page) => {
    const list = page.locator('nav.sections');
    const heading = 'white-takes-on-c5';
    await list.getByRole('link', { name: 'White takes on c5' }).click();
    await expect.poll(() => list.locator('[aria-current]').textContent()).toBe('White takes on c5');
    expect(await inSight(page, heading)).toBe(true);
    // A diagram that no move of the text leads to is shown on the board too.
    await page.locator('.diagram').nth(1).scrollIntoViewIfNeeded();
    await page.evaluate(() => {
      document.querySelectorAll('.diagram')[1]?.scrollIntoView({ block: 'start' });
    });
    await expect.poll(() => caption(page)).toBe('Diagram 2');
    // The blocks that begin where a line ends are ways on from there.
    await page.locator('#tabiya').click();
    await expect.poll(() => page.locator('.board-choice').count()).toBe(9);
    await page.getByRole('button', { name: '9.dxc5' }).click();
    await expect.poll(() => caption(page)).toBe('after 9.dxc5');
    const text = await page.locator('.board-comment').textContent();
    expect(await page.locator('article').textContent()).toContain(text ?? 'none');

    for (const viewport of [
      { width: 390, height: 844 },
      { width: 320, height: 256 },
      { width: 320, height: 180 },
      { width: 844, height: 390 },
      { width: 820, height: 1180 },
    ]) {
      await page.setViewportSize(viewport);
      await page.evaluate(() => scrollTo(0, 3000));
      await settled(page);
      const { width = 0, height = 0 } = (await page.locator('.beside').boundingBox()) ?? {};
      const share =
        (width * Math.min(height, viewport.height)) / (viewport.width * viewport.height);
      expect(share, JSON.stringify(viewport)).toBeLessThanOrEqual(0.5);
    }
    // In a low window it is folded, and asked for it takes the window.
    await page.setViewportSize({ width: 320, height: 200 });
    await page.getByRole('button', { name: 'Show the board' }).click();
    await expect
      .poll(async () => (await page.locator('.beside svg.board').boundingBox())?.height)
      .toBeGreaterThan(100);
    await page.setViewportSize({ width: 390, height: 844 });
    await page.evaluate(() => scrollTo(0, 0));
    await settled(page);
    expect((await page.locator('article p').first().boundingBox())?.y).toBeLessThan(844 - 100);
    const fold = page.locator('details.sections');
    await fold.locator('summary').click();
    await fold.getByRole('link', { name: 'White takes on c5' }).click();
    await expect.poll(() => fold.getAttribute('open')).toBe(null);
    expect(await inSight(page, heading)).toBe(true);
    // From here on it floats, and leads back as well.
    await expect.poll(() => fold.getAttribute('class')).toContain('floating');
    await fold.locator('summary').click();
    await fold.getByRole('link', { name: 'The main line: 9.Bg5' }).click();
    await expect.poll(() => fold.getAttribute('open')).toBe(null);
    await expect.poll(() => inSight(page, 'the-main-line-9-bg5')).toBe(true);
  }));
