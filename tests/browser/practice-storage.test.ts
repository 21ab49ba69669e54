/** Practice whose database is closed, deleted or refused under it: nothing that was answered is lost. */
import path from 'node:path';
import { build } from 'esbuild';
import type { CDPSession, Page } from 'playwright-core';
import { expect, test } from 'vitest';
import { runs, seed } from '../setup/runs.ts';
import { openPage, useDemo } from './browser.ts';
import { learn, playOn, practiceOf, tally, toOverview } from './practising.ts';

const demo = useDemo();
const { open, practising } = practiceOf(demo);
const database = 'practice:tarrasch-defence';

/** Learns eight moves, and tells how many the page then takes for learnt. */
async function learnEight(page: Page): Promise<number | undefined> {
  await learn(page);
  await playOn(page);
  await toOverview(page);
  return (await tally(page))[1];
}

/** How many items are kept, as another page of the site finds them. */
function kept(page: Page): Promise<number> {
  return page.evaluate(
    (name) =>
      new Promise<number>((resolve, reject) => {
        const request = indexedDB.open(name);
        request.onerror = () => reject(request.error);
        request.onsuccess = () => {
          const { result } = request;
          const count = result.transaction('items').objectStore('items').count();
          count.onsuccess = () => {
            resolve(count.result);
            result.close();
          };
        };
      }),
    database,
  );
}

/** Keeps hold of the page's connections, and lets tests refuse new ones. */
async function watchOpening(page: Page): Promise<void> {
  await page.addInitScript(() => {
    const { open } = IDBFactory.prototype;
    const state = { connections: [] as IDBDatabase[], refuse: 0, refused: 0 };
    IDBFactory.prototype.open = function (...args) {
      if (state.refuse > 0) {
        state.refuse--;
        state.refused++;
        throw new DOMException('Internal error opening backing store.', 'UnknownError');
      }
      const request = open.apply(this, args);
      request.addEventListener('success', () => state.connections.push(request.result));
      return request;
    };
    Object.assign(globalThis, {
      storage: state,
      closeAll: () => {
        for (const connection of state.connections) connection.close();
      },
    });
  });
}

test('deleted from another page during a session: what is answered then is written', () =>
  practising(async (page, context) => {
    expect(await learnEight(page)).toBe(8);
    const other = await context.newPage();
    await other.goto(`${demo().address}404.html`);
    await learn(page);
    const deleted = await other.evaluate(
      (name) =>
        new Promise((resolve) => {
          const request = indexedDB.deleteDatabase(name);
          request.onsuccess = () => resolve('deleted');
          request.onblocked = () => resolve('blocked');
        }),
      database,
    );
    expect(deleted).toBe('deleted');
    await playOn(page);
    await toOverview(page);
    expect(await page.getByRole('alert').isVisible()).toBe(false);
    expect(await kept(other)).toBe(8);
    await open(page);
    expect((await tally(page))[1]).toBe(8);
  }));

test('closed under a session: it is opened again, and nothing is lost', () =>
  practising(
    async (page) => {
      await learn(page);
      await page.evaluate('closeAll()');
      await playOn(page);
      await toOverview(page);
      expect(await page.getByRole('alert').isVisible()).toBe(false);
      await page.evaluate('closeAll()');
      expect(await learnEight(page)).toBe(16);
      await open(page);
      expect((await tally(page))[1]).toBe(16);
    },
    { prepare: watchOpening },
  ));

test('site data cleared by the browser: what is answered then is written', () =>
  practising(async (page, context) => {
    expect(await learnEight(page)).toBe(8);
    await learn(page);
    const devtools: CDPSession = await context.newCDPSession(page);
    const { origin } = new URL(demo().address);
    await devtools.send('Storage.clearDataForOrigin', { origin, storageTypes: 'indexeddb' });
    await playOn(page);
    await toOverview(page);
    expect(await page.getByRole('alert').isVisible()).toBe(false);
    await open(page);
    expect((await tally(page))[1]).toBe(8);
  }));

test('an opening that fails once is not even seen', () =>
  practising(
    async (page) => {
      expect(await page.evaluate('storage.refused')).toBe(1);
      expect(await page.getByRole('alert').isVisible()).toBe(false);
      expect(await learnEight(page)).toBe(8);
      await open(page);
      expect((await tally(page))[1]).toBe(8);
    },
    {
      prepare: async (page) => {
        await watchOpening(page);
        await page.addInitScript('storage.refuse = 1');
      },
    },
  ));

test('one that fails for a while is told, and tried again without a hand; then all is written', () =>
  practising(
    async (page, context) => {
      await page.evaluate('closeAll(); storage.refuse = 1e9;');
      expect(await learnEight(page)).toBe(8);
      const trouble = page.getByRole('alert');
      expect(await trouble.textContent()).toContain('The page tries again');
      const other = await context.newPage();
      await other.goto(`${demo().address}404.html`);
      expect(await kept(other)).toBe(0);
      await page.evaluate('storage.refuse = 0');
      await expect.poll(() => trouble.isVisible()).toBe(false);
      expect(await kept(other)).toBe(8);
      await open(page);
      expect((await tally(page))[1]).toBe(8);
    },
    { prepare: watchOpening },
  ));

/** The store alone, as a script for a page. */
async function storeScript(): Promise<string> {
  const { outputFiles } = await build({
    stdin: {
      contents: "export { openStore } from './src/browser/practice/store/store.ts';",
      resolveDir: path.resolve(import.meta.dirname, '../..'),
    },
    bundle: true,
    format: 'iife',
    globalName: 'practice',
    write: false,
  });
  return outputFiles[0]?.text ?? '';
}

test('whatever fails, in whichever order, every answer of two tabs is written once', async () => {
  const { page } = await openPage(demo().browser);
  await page.goto(`${demo().address}404.html`);
  await page.evaluate(await storeScript());
  const wrong = await page.evaluate(
    async ({ start, rounds }) => {
      const { openStore } = (globalThis as unknown as { practice: Practice }).practice;
      let state = start;
      const random = (below: number) => {
        state = (Math.imul(state, 1_103_515_245) + 12_345) & 0x7fffffff;
        return (state >> 8) % below;
      };
      const { open } = IDBFactory.prototype;
      const { put } = IDBObjectStore.prototype;
      const connections: IDBDatabase[] = [];
      let [refusals, failures, aborts] = [0, 0, 0];
      IDBFactory.prototype.open = function (...args) {
        if (refusals > 0) {
          refusals--;
          throw new DOMException('refused', 'UnknownError');
        }
        const request = open.apply(this, args);
        request.addEventListener('success', () => connections.push(request.result));
        return request;
      };
      IDBObjectStore.prototype.put = function (...args) {
        if (failures > 0) {
          failures--;
          throw new DOMException('full', 'QuotaExceededError');
        }
        const request = put.apply(this, args);
        if (aborts > 0) {
          aborts--;
          this.transaction.abort();
        }
        return request;
      };
      const faults = [
        () => connections.splice(0).forEach((connection) => void connection.close()),
        () => (refusals = random(4)),
        () => (failures = random(3)),
        () => (aborts = random(3)),
      ];
      const key = (tab: number, n: number) =>
        `8/8/8/8/8/8/8/${tab + 1}K${n + 1}k${4 - tab - n} w - -`;
      const item = (name: string, answers: number) => ({
        ...{ key: name, advice: 'Kb1', last: 20_000, due: 20_001, stability: 1, difficulty: 5 },
        ...{ answers, misses: 0, at: 20_000 * 86_400_000 + answers, history: [] },
      });
      const wrong: string[] = [];
      for (let round = 0; round < rounds; round++) {
        const stores = [0, 1].map(() => openStore(`round-${round}`, () => undefined));
        const given = new Map<string, number>();
        for (let step = 0; step < 14; step++) {
          if (random(2) === 0) faults[random(faults.length)]?.();
          const tab = random(2);
          const name = key(tab, random(2));
          given.set(name, (given.get(name) ?? 0) + 1);
          const done = stores[tab]?.change(name, (before) =>
            item(name, (before?.answers ?? 0) + 1),
          );
          if (random(3) === 0) await done;
          if (random(4) === 0) void stores[tab]?.all();
        }
        [refusals, failures, aborts] = [0, 0, 0];
        for (const store of stores) await store.all();
        const fresh = await openStore(`round-${round}`, () => undefined).all();
        for (const [name, times] of given) {
          const answers = fresh.get(name)?.answers;
          if (answers !== times) wrong.push(`round ${round}: ${name}: ${answers} of ${times}`);
        }
        for (const { trouble } of stores) if (trouble !== undefined) wrong.push(trouble);
      }
      return wrong;
    },
    { start: seed, rounds: runs(30) },
  );
  expect(wrong, `seed ${seed}`).toEqual([]);
  await page.context().close();
});

interface Practice {
  openStore(
    course: string,
    onChange: () => void,
  ): {
    readonly trouble: string | undefined;
    all(): Promise<ReadonlyMap<string, { readonly answers: number }>>;
    change(
      key: string,
      change: (before: { readonly answers: number } | undefined) => object,
    ): Promise<unknown>;
  };
}
