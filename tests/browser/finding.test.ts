/** Finding things in the published course: words, positions, boards, the tree. */
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import type { Page } from 'playwright-core';
import { describe, expect, test } from 'vitest';
import { violations, violationsInBoth } from './axe.ts';
import { goBack, onPage, openPage, useDemo } from './browser.ts';

const demo = useDemo();

function on(name: string, use: (page: Page) => Promise<void>): Promise<void> {
  return onPage(demo().browser, async (page) => {
    await page.goto(demo().address + name);
    await use(page);
  });
}

const status = (page: Page, section: string) =>
  page.locator(`section:has(${section}) .status`).textContent();

async function searchPosition(page: Page, text: string): Promise<string> {
  await page.fill('#page-position', text);
  // The answer comes when the course's table is there: what was said before must not be taken for it.
  const said = page.locator('section:has(.for-position) .status');
  await said.evaluate((element) => element.replaceChildren());
  await page.press('#page-position', 'Enter');
  await expect.poll(() => said.textContent()).not.toBe('');
  return (await said.textContent()) ?? '';
}

describe('words', () => {
  test('are found in their chapter, and a result leads to where they stand', () =>
    on('search.html', async (page) => {
      await page.fill('#page-words', 'student lost a league game');
      await page.press('#page-words', 'Enter');
      const result = page.locator('.found-list > li').first();
      await result.waitFor();
      expect(await status(page, '.for-words')).toBe('Found on one page.');
      expect(await result.locator('.found-chapter').textContent()).toBe(
        'Other doors to the same room',
      );
      expect(await result.locator('mark').allTextContents()).toContain('league');
      await result.locator('ul a').first().click();
      await page.waitForURL(/move-orders\.html/);
      await goBack(page);
      // What was searched for stands in the address.
      await page.locator('.found-list > li').first().waitFor();
      expect(await page.inputValue('#page-words')).toBe('student lost a league game');
    }));

  test('lead to a place that the chapter has, and its board shows it', () =>
    on('search.html', async (page) => {
      await page.fill('#page-words', 'spends the evening behind it');
      await page.press('#page-words', 'Enter');
      await page.locator('.found-list ul a').first().click();
      await page.waitForURL(/isolated-pawn\.html#/);
      const id = decodeURIComponent(new URL(page.url()).hash.slice(1));
      expect(await page.locator(`[id="${id}"]`).count()).toBe(1);
      await page.locator('.board-caption').waitFor();
      expect(await page.locator('.board-caption').textContent()).toBe('after 3...Nf6');
    }));

  test('that are nowhere, or a title', () =>
    on('search.html', async (page) => {
      await page.fill('#page-words', 'xylophone');
      await page.press('#page-words', 'Enter');
      await page.getByText('No page has “xylophone”.').waitFor();
      await page.fill('#page-words', 'queens gambit');
      await page.press('#page-words', 'Enter');
      const named = page.locator('.found-list .plate', { hasText: 'after 2...e6' });
      await named.waitFor();
      const link = named.locator('a', { hasText: 'The Queen’s Gambit' });
      expect(await link.getAttribute('href')).toBe('isolated-pawn.html#queens-gambit');
      expect(await named.locator('svg .pieces use').count()).toBe(32);
      // The author's own name for it is no word of the course.
      await page.fill('#page-words', 'tabiya');
      await page.press('#page-words', 'Enter');
      await page.getByText('No page has “tabiya”.').waitFor();
      expect(await page.locator('.found a').count()).toBe(0);
    }));

  test('as a whole phrase come first, each part with its board and one heading', () =>
    on('search.html', async (page) => {
      await page.fill('#page-words', 'isolated pawn');
      await page.press('#page-words', 'Enter');
      const parts = page.locator('.found-part');
      await parts.first().waitFor();
      expect(await status(page, '.for-words')).toContain('come first');
      const inARow = /isolated\W+pawn/;
      expect(await parts.first().locator('.excerpt').textContent()).toMatch(inARow);
      expect(await parts.locator('svg').count()).toBeGreaterThan(2);
      const headings = await page.locator('.found-list > li:has(ul) a').allTextContents();
      expect(new Set(headings).size).toBe(headings.length);
      await page.fill('#page-words', '"isolated pawn"');
      await page.press('#page-words', 'Enter');
      await expect
        .poll(async () =>
          (await parts.locator('.excerpt').allTextContents()).every((text) => inARow.test(text)),
        )
        .toBe(true);
    }));

  test('need the published site, which a page from a folder says; positions do not', async () => {
    const { page } = await openPage(demo().browser);
    await page.goto(String(pathToFileURL(path.join(demo().site, 'search.html'))));
    await page.fill('#page-words', 'isolated');
    await page.press('#page-words', 'Enter');
    expect(await status(page, '.for-words')).toContain('needs the published site');
    expect(await searchPosition(page, '1.d4 d5')).toContain('The course has this position');
    await page.context().close();
  });
});

describe('a position', () => {
  test('is found by moves or FEN, with its board, its places and what follows', () =>
    on('search.html', async (page) => {
      const said = await searchPosition(page, '1.c4 e6 2.d4 d5');
      expect(said).toBe('The course has this position: after 2...e6.');
      const card = page.locator('.position-card');
      expect(await card.locator('svg .pieces use').count()).toBe(32);
      expect(await card.textContent()).toContain('White to move');
      await card.locator('a', { hasText: 'after 2...e6' }).click();
      await page.waitForURL(/isolated-pawn\.html#queens-gambit$/);
      await goBack(page);
      // What was asked for is found again.
      await card.waitFor();
      const fen = 'rnbqkbnr/ppp2ppp/4p3/3p4/2PP4/8/PP2PPPP/RNBQKBNR w KQ - 0 3';
      expect(await searchPosition(page, fen)).toContain('does not have this position');
      expect(await page.locator('.found-list').textContent()).toContain(
        'after 2...e6, but the castling rights differ',
      );
    }));

  test('that leaves the course tells where', () =>
    on('search.html', async (page) => {
      expect(await searchPosition(page, '1.d4 d5 2.c4 e6 3.Qa4+')).toBe(
        'The course knows this up to 2...e6; it does not have 3.Qa4+.',
      );
      expect(await searchPosition(page, '1.d4 d5 2.Nf4')).toContain(
        'Nf4 cannot be played after 1...d5. The reason: ',
      );
    }));

  test('that is none tells what is wrong, where, and what would be right', () =>
    on('search.html', async (page) => {
      // As the course itself begins.
      expect(await searchPosition(page, 'white wins')).toContain('such as 1.d4 d5 2.c4 e6.');
      const hint = page.locator('#page-position-hint');
      expect(await hint.textContent()).toBe('Such as 1.d4 d5 2.c4 e6');
      const said = await searchPosition(page, 'rnbqkbnr/pppppppp/8/8/9/8/PPPPPPPP/RNBQKBNR w - -');
      expect(said).toContain('This is no FEN. The reason: 9 stands for no piece');
      expect(await page.locator('.found mark').textContent()).toBe('9');
      expect(await searchPosition(page, '<b>what</b> is this?')).toContain(
        'is neither a FEN nor moves.',
      );
      expect(await searchPosition(page, ' ')).toBe('Type or paste a FEN or moves.');
    }));

  test('can be set up on a board, a piece at a time', () =>
    on('search.html', async (page) => {
      await page.locator('.for-board summary').click();
      const set = async (piece: string, square: string) => {
        await page.getByRole('button', { name: piece, exact: true }).click();
        await page.locator(`.squares [data-square="${square}"]`).click();
      };
      await set('White pawn', 'd4');
      const count = await page.evaluate(() => {
        const pawns = (globalThis.courseTable?.positions ?? []).filter(({ key }) => {
          const fourth = key.split('/')[4]?.replace(/\d/g, (empty) => ' '.repeat(Number(empty)));
          return fourth?.charAt(3) === 'P';
        });
        return pawns.length;
      });
      expect(count).toBeGreaterThan(50);
      expect(await status(page, '.for-board')).toBe(`${count} positions have them among others:`);
      expect(await page.locator('.found-list a').count()).toBe(20);
      await page.getByRole('button', { name: 'Show 20 more' }).click();
      expect(await page.locator('.found-list a').count()).toBe(40);
      const next = page.locator('.found-list > li').nth(20).locator('a');
      expect(await next.evaluate((link) => link === document.activeElement)).toBe(true);
      await set('Black knight', 'a1');
      expect(await status(page, '.for-board')).toBe(
        'No position of the course has these pieces on these squares.',
      );
      await page.getByRole('button', { name: 'Set up all pieces' }).click();
      expect(await status(page, '.for-board')).toBe('One position has just these pieces:');
      await page.getByRole('button', { name: 'Empty the board' }).click();
      expect(await status(page, '.for-board')).toBe('Put a piece on the board.');
    }));
});

describe('the tree', () => {
  test('unfolds by mouse and by keys, and folds again', () =>
    on('tree.html', async (page) => {
      await page.getByRole('button', { name: 'Fold everything', exact: true }).click();
      const folds = page.locator('.tree-fold:visible');
      const folded = await folds.count();
      const first = folds.first();
      await first.click();
      expect(await first.getAttribute('aria-expanded')).toBe('true');
      expect(await folds.count()).toBeGreaterThan(folded);
      await first.focus();
      await page.keyboard.press('ArrowLeft');
      expect(await first.getAttribute('aria-expanded')).toBe('false');
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowRight');
      const second = folds.nth(1);
      expect(await second.evaluate((button) => button === document.activeElement)).toBe(true);
      await page.keyboard.press('Enter');
      expect(await second.getAttribute('aria-expanded')).toBe('true');
      await page.keyboard.press('ArrowUp');
      expect(await first.evaluate((button) => button === document.activeElement)).toBe(true);
    }));

  test('has a board that follows by mouse and keys, and leads to where the position stands', () =>
    on('tree.html', async (page) => {
      const move = page.getByRole('button', { name: '2...e6', exact: true }).first();
      await move.click();
      const said = page.locator('.tree-said');
      expect(await said.textContent()).toContain('2...e6The Queen’s Gambit');
      const placed = () => page.locator('.tree-board use[data-square="e6"]').count();
      expect(await placed()).toBe(1);
      await page.keyboard.press('ArrowLeft');
      expect(await said.textContent()).toMatch(/^2\.c4/);
      expect(await placed()).toBe(0);
      await page.keyboard.press('ArrowRight');
      await page.keyboard.press('ArrowRight');
      expect(await said.textContent()).toMatch(/^3\./);
      await move.hover();
      expect(await placed()).toBe(1);
      // Nothing that the scripts make says a name of the author's.
      expect(await page.locator('main').textContent()).not.toContain('queens-gambit');
      // The way to the link is over other moves; what was chosen stays.
      await move.click();
      await said.locator('a', { hasText: 'The pawn on d5' }).click();
      await page.waitForURL(/isolated-pawn\.html#queens-gambit$/);
    }));

  test('has every position once', () =>
    on('tree.html', async (page) => {
      await page.getByRole('button', { name: 'Unfold everything' }).click();
      const { positions, seen } = await page.evaluate(() => ({
        positions: globalThis.courseTable?.positions.length ?? 0,
        seen: [...document.querySelectorAll('[id^="position-"]')].map(({ id }) => id),
      }));
      const roots = await page.locator('.tree-lines[aria-label]').count();
      expect(new Set(seen).size).toBe(seen.length);
      expect(seen.length).toBe(positions - roots);
    }));

  test('tells where a line that meets another goes on, and leads there', () =>
    on('tree.html', async (page) => {
      const see = page.locator('a.tree-see').first();
      const target = await see.getAttribute('href');
      await see.click();
      const focused = page.locator(':focus');
      expect(`#${await focused.getAttribute('id')}`).toBe(target);
      expect(new URL(page.url()).hash).toBe(target);
    }));

  test('is opened at a position by its address', () =>
    on('search.html', async (page) => {
      await searchPosition(page, '1.d4 d5 2.c4 e6 3.Nc3 c5 4.cxd5 exd5 5.Nf3');
      await page.locator('a', { hasText: 'Show in the tree' }).click();
      await page.waitForURL(/tree\.html#position-/);
      expect(await page.locator(':focus').textContent()).toBe('5.Nf3');
    }));
});

test('positions are boards, and say what the reader knows of each', () =>
  on('positions.html', async (page) => {
    const plates = page.locator('.plate');
    expect(await plates.locator('svg .pieces').count()).toBe(await plates.count());
    expect(await plates.first().locator('b').textContent()).toBe('The Queen’s Gambit');
    expect(await page.locator('.known').count()).toBe(0);
    await page.evaluate(async () => {
      const plate = document.querySelector<HTMLElement>('.plate[data-asked]');
      const name = `practice:${document.body.dataset.course}`;
      const names = await indexedDB.databases();
      if (names.some((each) => each.name === name)) throw new Error('the page made a database');
      await new Promise<void>((resolve) => {
        const opening = indexedDB.open(name, 1);
        opening.onupgradeneeded = () => {
          const items = opening.result.createObjectStore('items', { keyPath: 'key' });
          const [advice] = (plate?.dataset.advice ?? '').split(' ');
          items.put({ key: plate?.dataset.asked, advice, last: 20_000, due: 20_020 });
        };
        opening.onsuccess = () => {
          opening.result.close();
          resolve();
        };
      });
    });
    await page.reload();
    const known = page.locator('.known').first();
    await known.waitFor();
    expect(await known.textContent()).toBe(' comes back today');
    expect(await known.locator('.state-due').count()).toBe(1);
    // As they are without it, `pages.test.ts` looks at all of them.
    await page.evaluate(() => {
      for (const plate of [...document.querySelectorAll('.plate:not(:has(.known))')].slice(3)) {
        plate.remove();
      }
    });
    expect(await violations(page)).toEqual([]);
  }));

test('without script the pages say what is missing, and link the chapters', async () => {
  const { page } = await openPage(demo().browser, { javaScriptEnabled: false });
  for (const name of ['search.html', 'tree.html']) {
    await page.goto(demo().address + name);
    const note = page.locator('main noscript');
    expect(await note.textContent()).toContain('JavaScript');
    expect(await note.locator('a').count()).toBe(3);
  }
  await page.context().close();
});

test('axe-core finds nothing once something is found, unfolded, set up', () =>
  on('search.html#words=isolated', async (page) => {
    await page.locator('.found-list').first().waitFor();
    await searchPosition(page, '1.d4 d5 2.c4 e6');
    await page.locator('.for-board summary').click();
    expect(await violationsInBoth(page)).toEqual([]);
    await page.goto(`${demo().address}tree.html`);
    await page.locator('.tree-fold').nth(3).click();
    expect(await violationsInBoth(page)).toEqual([]);
  }));
