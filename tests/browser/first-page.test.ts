/** The first page: a position to play on, one thing to do, what was read and what is due; and the head of all pages. */
import { expect, test } from 'vitest';
import { goBack, onPage, openPage, useDemo, windows } from './browser.ts';

const demo = useDemo();

test('the cover is played on through the moves of the course, and says where each stands', async () => {
  await onPage(demo().browser, async (page) => {
    await page.goto(`${demo().address}index.html`);
    const act = page.locator('.cover .act');
    expect(await act.textContent()).toContain('Begin');
    expect(await act.getAttribute('href')).toBe('isolated-pawn.html');
    const figure = page.locator('.key-position');
    const said = figure.locator('.key-words');
    expect(await said.textContent()).toContain('11...Re8');

    // A reader's hand comes near: the moves arrive. Nothing below the board moves for them.
    const captionAt = async () => (await figure.locator('figcaption').boundingBox())?.y;
    const before = await captionAt();
    await figure.hover();
    await figure.locator('.squares').waitFor();
    expect(Math.abs(((await captionAt()) ?? 0) - (before ?? 0))).toBeLessThan(2);
    await figure.locator('.squares [data-square="a1"]').click();
    await figure.locator('.squares [data-square="c1"]').click();
    await expect.poll(() => said.textContent()).toContain('12.Rc1');
    const link = figure.locator('figcaption a');
    const href = (await link.getAttribute('href')) ?? '';
    expect(href).toMatch(/^isolated-pawn\.html#at-.*-b$/);

    // Legal, and no move of the course.
    await figure.locator('.squares [data-square="h6"]').click();
    await figure.locator('.squares [data-square="h5"]').click();
    await expect.poll(() => said.textContent()).toContain('h5 is legal');
    await figure.getByRole('button', { name: 'Back' }).click();
    await expect.poll(() => said.textContent()).toContain('11...Re8');
    expect(await link.getAttribute('href')).toBe('isolated-pawn.html#iqp-setup');
    await page.goto(demo().address + href);
    expect(await page.locator(':target').count()).toBe(1);
  });
});

test('who has read some of it goes on where he stopped, sees what was read, and what is due', async () => {
  await onPage(demo().browser, async (page) => {
    // The reader's time: the page's own would go on while the machine is busy elsewhere.
    await page.addInitScript(() => {
      let now = 0;
      performance.now = () => now;
      const pass = (ms: number) => {
        now += ms;
      };
      Object.assign(globalThis, { pass });
    });
    await page.goto(`${demo().address}isolated-pawn.html`);
    await page.waitForFunction(
      () => document.head.querySelector('script[src*="keep-reading"]') !== null,
    );
    await page.waitForLoadState('networkidle');
    const headings = page.locator('article > h2[id]');
    const title = await headings.nth(1).textContent();
    // What comes into sight is told with the next frame.
    const frames = () =>
      page.evaluate(async () => {
        for (let frame = 0; frame < 3; frame++) await new Promise(requestAnimationFrame);
      });
    const readFirst = async (ms: number) => {
      await headings.nth(0).scrollIntoViewIfNeeded();
      await frames();
      await page.evaluate(`pass(${ms})`);
      await headings.nth(1).evaluate((heading) => heading.scrollIntoView({ block: 'center' }));
      await page.evaluate(() => scrollBy(0, 200));
      await frames();
    };
    await readFirst(2999);
    // Nobody reads so fast: who only looked in begins at the beginning.
    await page.goto(`${demo().address}index.html`);
    expect(await page.locator('.cover .act').textContent()).toContain('Begin');
    await goBack(page);
    await page.waitForURL((url) => !url.pathname.endsWith('index.html'));
    await page.waitForLoadState('networkidle');
    await readFirst(3000);

    await page.goto(`${demo().address}index.html`);
    const act = page.locator('.cover .act');
    expect(await act.textContent()).toContain('Go on');
    expect(await page.locator('.act-about').textContent()).toContain(title);
    expect(await act.getAttribute('href')).toMatch(/^isolated-pawn\.html#/);
    const chapter = page.locator('[data-chapter="isolated-pawn"]');
    expect(await chapter.textContent()).toContain('1 of 7 sections read');
    expect(await chapter.locator('.measure .read').count()).toBe(1);
    expect(await page.locator('.cover-due').count()).toBe(0);

    // What practice leaves (`contract/forecast.ts`): six moves, due long ago.
    await page.evaluate(() =>
      localStorage.setItem('practice:tarrasch-defence:forecast', '[[1,6]]'),
    );
    await page.reload();
    expect(await page.locator('.cover-due').textContent()).toContain('6 moves are due in practice');
  });
});

test('all pages can be reached from each, on a phone and without script', async () => {
  const { page } = await openPage(demo().browser, {
    javaScriptEnabled: false,
    viewport: windows.phone,
  });
  await page.goto(`${demo().address}move-orders.html`);
  const list = page.locator('.all-pages nav');
  expect(await list.isVisible()).toBe(false);
  await page.locator('.all-pages summary').click();
  const names = await list.getByRole('link').allTextContents();
  for (const name of [
    'Contents',
    'The pawn on d5',
    'Practice',
    'Tree',
    'What is new',
    'To print',
  ]) {
    expect(names.map((each) => each.trim())).toContain(name);
  }
  expect((await list.locator('[aria-current="page"]').textContent())?.trim()).toBe(
    'Other doors to the same room',
  );
  // The first page has all of its words, and begins at the beginning.
  await page.goto(`${demo().address}index.html`);
  expect(await page.locator('.cover .act').getAttribute('href')).toBe('isolated-pawn.html');
  expect(await page.locator('.teaches li').count()).toBe(3);
  expect(await page.locator('.takes').textContent()).toMatch(/\d+ minutes/);
  await page.context().close();
});
