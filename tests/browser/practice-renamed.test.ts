/** Practice in a course that goes by another id: nothing known is asked as new. */
import { writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Page } from 'playwright-core';
import { expect, inject, test } from 'vitest';
import type { Item } from '../../src/browser/practice/store/item.ts';
import { useDemo } from './browser.ts';
import {
  button,
  changeTable,
  dayAfter,
  learn,
  playOn,
  practiceOf,
  readBack,
  savedText,
  tally,
  today,
  toOverview,
} from './practising.ts';

const demo = useDemo();
const { open, practising } = practiceOf(demo);

/** Serves the course under another id from now on. */
const rename = (page: Page, course: string) =>
  changeTable(page, (table) => ({ ...table, course, title: `The ${course}` }));
const told = (page: Page) => page.locator('.practice-notice');

async function learnEight(page: Page): Promise<void> {
  await learn(page);
  await playOn(page);
  await toOverview(page);
}

test('what was learnt is found again, once, and told; its days are kept', () =>
  practising(async (page) => {
    await learnEight(page);
    const before = await tally(page);
    await rename(page, 'renamed');
    await open(page);
    expect(await tally(page)).toEqual(before);
    expect(await told(page).textContent()).toMatch(/^You have practised 8 of these moves before/);
    await open(page);
    expect(await told(page).isVisible()).toBe(false);
    await page.clock.setFixedTime(dayAfter(3));
    await open(page);
    expect(await today(page)).toContain('8 moves come back today.');
    // Missed under the new name: the old record, which knows better, does not come back.
    await button(page, 'Only the 8 that come back').click();
    await playOn(page, 8);
    await toOverview(page);
    const missed = await tally(page);
    await open(page);
    expect(await tally(page)).toEqual(missed);
    // And the old edition, should it come back, has its own.
    await page.unroute(/course-table/);
    await open(page);
    expect(await tally(page)).toEqual([...before.slice(0, 3), 8]);
  }));

test('what has been forgotten is not found again', () =>
  practising(async (page) => {
    const untouched = await tally(page);
    await learnEight(page);
    await rename(page, 'renamed');
    await open(page);
    await page.getByText('Forget everything').press('Enter');
    await button(page, 'Forget it now').press('Enter');
    await expect.poll(() => tally(page)).toEqual(untouched);
    expect(await told(page).isVisible()).toBe(false);
    await open(page);
    expect(await tally(page)).toEqual(untouched);
  }));

test('other advice, the other side, and what only looks like progress are left alone', () =>
  practising(async (page) => {
    await learnEight(page);
    const untouched = (await tally(page)).reduce((sum, count) => sum + count);
    await page.evaluate(async () => {
      const opened = (name: string, version: number, upgrade: (database: IDBDatabase) => void) =>
        new Promise<IDBDatabase>((resolve) => {
          const request = indexedDB.open(name, version);
          request.onupgradeneeded = () => upgrade(request.result);
          request.onsuccess = () => resolve(request.result);
        });
      const own = await opened('practice:tarrasch-defence', 1, () => undefined);
      const items = await new Promise<Item[]>((resolve) => {
        const all = own.transaction('items').objectStore('items').getAll();
        all.onsuccess = () => resolve(all.result);
      });
      const keep = async (name: string, change: (item: Item) => object, version = 1) => {
        const database = await opened(`practice:${name}`, version, (fresh) => {
          fresh.createObjectStore('items', { keyPath: 'key' });
        });
        const store = database.transaction('items', 'readwrite').objectStore('items');
        for (const item of items) store.put(change(item));
        database.close();
      };
      await keep('other-advice', (item) => ({ ...item, advice: 'a5' }));
      await keep('other-side', (item) => ({ ...item, key: item.key.replace(' b ', ' w ') }));
      await keep('none-of-ours', ({ key }) => ({ key, chess: false }), 7);
      (await opened('practice:empty', 3, () => undefined)).close();
      own.close();
      await new Promise((resolve) => {
        indexedDB.deleteDatabase('practice:tarrasch-defence').onsuccess = resolve;
      });
    });
    await open(page);
    expect((await tally(page))[2]).toBe(untouched);
    expect(await told(page).isVisible()).toBe(false);
    const names = await page.evaluate(async () =>
      (await indexedDB.databases()).map(({ name, version }) => `${name} ${version}`).sort(),
    );
    expect(names).toEqual([
      'practice:empty 3',
      'practice:none-of-ours 7',
      'practice:other-advice 1',
      'practice:other-side 1',
      'practice:tarrasch-defence 1',
    ]);
  }));

test('a file from before the course was renamed is taken; one with impossible dates is mended, and told', () =>
  practising(async (page) => {
    await learnEight(page);
    const learnt = await tally(page);
    const text = await savedText(page);
    await practising(async (elsewhere) => {
      await rename(elsewhere, 'renamed');
      await open(elsewhere);
      const status = elsewhere.locator('.practice-keeping [role=status]');
      const read = async (name: string, content: string) => {
        const file = path.join(inject('runFolder'), name);
        await writeFile(file, content);
        await readBack(elsewhere, file);
      };
      // The last item is due in the year 4707, the first was answered in the year 275760.
      const items = JSON.parse(text).items as Item[];
      const broken = items.map((item, index) =>
        index === 0 ? { ...item, last: 1e8 } : index === 7 ? { ...item, due: 1e6 } : item,
      );
      await read('renamed.json', JSON.stringify({ ...JSON.parse(text), items: broken }));
      await expect
        .poll(() => status.textContent())
        .toBe(
          'Read: the file belongs to another course, “The Tarrasch Defence: a Black answer to 1.d4”. 8 of its moves are asked here too and were taken. 2 of them had a date or a number that cannot be; they were put right.',
        );
      // The one is asked now, the other in a year.
      const [known = 0, learning = 0, , due] = await tally(elsewhere);
      expect([known + learning, due]).toEqual([learnt[1], 1]);
    });
  }));
