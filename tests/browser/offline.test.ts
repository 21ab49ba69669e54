/** The course without a network: kept after one visit, as a whole edition or not at all. */
import {
  cpSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  renameSync,
  rmSync,
  writeFileSync,
} from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import type { BrowserContext, Page } from 'playwright-core';
import { afterAll, afterEach, beforeAll, beforeEach, expect, test } from 'vitest';
import { workerFile, writeWorker } from '../../src/site/offline/write-worker.ts';
import { hostPolicy } from '../../src/site/security-policy.ts';
import { someOf } from '../setup/runs.ts';
import { newContext, pageFiles, serveFolder, useDemo } from './browser.ts';
import { headersOf } from './under-policy.ts';

const demo = useDemo();
const work = mkdtempSync(path.join(tmpdir(), 'linewright-offline-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

/** Without what other sites, the search and prints ask for: each kept file is a request in each of these tests. */
const lean = path.join(work, 'lean');
beforeAll(async () => {
  const isOfPages = (name: string) => !/^(?:boards|images|pagefind|files)(?:\/|$)/.test(name);
  cpSync(demo().site, lean, {
    recursive: true,
    filter: (from) => isOfPages(path.relative(demo().site, from)),
  });
  await write(lean);
});

let folder: string;
let server: Awaited<ReturnType<typeof serveFolder>>;
/** Where the copy is served; not the name of the reader's own machine, which is treated otherwise. */
let address: string;

beforeEach(async () => {
  folder = mkdtempSync(path.join(work, 'site-'));
  // As `demoBase` has it: the page for missing addresses knows where it stands.
  cpSync(lean, path.join(folder, 'tarrasch'), { recursive: true });
  await serve();
});
afterEach(() => server.close());

async function serve(headers: Readonly<Record<string, string>> = {}): Promise<void> {
  server = await serveFolder(folder, '/club/', headers);
  address = server.address.replace('127.0.0.1', 'club.localhost');
}

const site = () => path.join(folder, 'tarrasch');
const filesOf = (at: string) =>
  readdirSync(at, { recursive: true, encoding: 'utf8', withFileTypes: true })
    .filter((entry) => entry.isFile())
    .map((entry) => path.relative(at, path.join(entry.parentPath, entry.name)));

/** The page leaves its reader alone for three seconds before it keeps anything. Here it begins at once. */
const atOnce = (context: BrowserContext) =>
  context.addInitScript(() => {
    const wait = window.setTimeout.bind(window);
    const sooner = (task: () => void, ms: number) => wait(task, ms === 3000 ? 0 : ms);
    Object.assign(window, { setTimeout: sooner });
  });

async function visit(name = 'tarrasch/isolated-pawn.html'): Promise<Page> {
  const context = await newContext(demo().browser);
  await atOnce(context);
  const page = await context.newPage();
  await page.goto(address + name);
  return page;
}

/** Resolves when the worker has kept everything and answers for the page. */
async function kept(page: Page): Promise<void> {
  await page.evaluate(async () => {
    await navigator.serviceWorker.ready;
    if (navigator.serviceWorker.controller) return;
    await new Promise((resolve) =>
      navigator.serviceWorker.addEventListener('controllerchange', resolve, { once: true }),
    );
  });
}

/** Another edition, with this title on a page; of one that is half uploaded, only the worker's list is there. */
async function publish(title: string, isHalf = false): Promise<void> {
  const next = mkdtempSync(path.join(work, 'next-'));
  cpSync(site(), next, { recursive: true });
  const text = readFileSync(path.join(next, 'index.html'), 'utf8');
  const other = text.replace(/<h1>[^<]*/, `<h1>${title}`);
  writeFileSync(path.join(next, 'index.html'), other);
  await write(next);
  if (!isHalf) writeFileSync(path.join(site(), 'index.html'), other);
  // Whole at once: the browser looks for another worker by itself, and half of one would be one.
  renameSync(path.join(next, workerFile), path.join(site(), workerFile));
}

/** Writes the worker for the files that are there. */
const write = (at: string) =>
  writeWorker(
    at,
    filesOf(at).filter((name) => name !== workerFile),
  );

/** Has the browser look for another worker. A busy one may refuse to. */
const update = (page: Page) =>
  page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    await registration.update().catch(() => undefined);
  });

test('after one visit every page opens under the header of the handbook, and all that it shows or links is there', async () => {
  cpSync(demo().site, site(), { recursive: true, force: true });
  server.close();
  await serve(headersOf(hostPolicy));
  const page = await (await newContext(demo().browser)).newPage();
  const said: string[] = [];
  page.on('console', (message) => said.push(message.text()));
  // Here the page waits as long as for a reader.
  await page.goto(`${address}tarrasch/isolated-pawn.html`);
  await kept(page);
  server.close();
  const failed: string[] = [];
  page.on('requestfailed', (request) => {
    // A page that is left asks for nothing any more.
    if (request.failure()?.errorText !== 'net::ERR_ABORTED') failed.push(request.url());
  });
  // Boards for other sites are not kept: in their place the page for missing addresses would open.
  for (const file of someOf(pageFiles(site()), 8)) {
    await page.goto(`${address}tarrasch/${file}`);
    await expect.poll(() => page.locator('h1').first().isVisible(), { message: file }).toBe(true);
    expect(await page.locator('body.missing').count(), file).toBe(file === '404.html' ? 1 : 0);
    // Chromium asks for icons and the manifest on its own terms; what the page asks for is there.
    const own = failed.filter((url) => !/webmanifest|icons\//.test(url));
    expect(own, file).toEqual([]);
  }
  await page.goto(`${address}tarrasch/`);
  expect(await page.locator('.chapters li').count()).toBe(3);
  await page.goto(`${address}tarrasch/isolated-pawn.html?from=mail#tarrasch`);
  expect(await page.locator('.board-caption').textContent()).toContain('after 3...c5');
  const pictures = await page.evaluate(async () => {
    const links = [...document.querySelectorAll<HTMLAnchorElement>('.pictures a')];
    const answers = links.map(async ({ href }) => (await (await fetch(href)).blob()).size);
    return Promise.all(answers);
  });
  expect(pictures.length).toBeGreaterThan(2);
  expect(Math.min(...pictures)).toBeGreaterThan(1000);
  await page.goto(`${address}tarrasch/search.html`);
  await page.fill('#page-words', 'student lost a league game');
  await page.press('#page-words', 'Enter');
  await page.locator('.found-list .found-chapter').first().waitFor();
  expect(said).toEqual([]);
  await page.goto(`${address}tarrasch/no-such-chapter.html`);
  expect(await page.locator('body.missing h1').textContent()).toBe('There is no such page');
  await page.context().close();
});

test('a new edition is told, and comes when the reader asks for it', async () => {
  const page = await visit('tarrasch/index.html');
  await kept(page);
  const before = await page.locator('h1').textContent();
  await publish('The second edition');
  const notice = page.locator('.edition');
  const isTold = async () => {
    await update(page);
    return notice.isVisible();
  };
  await expect.poll(isTold, { interval: 500 }).toBe(true);
  expect(await notice.textContent()).toContain('A new edition of this course is there.');
  // Until then the old edition stands, whole, on every page that is opened.
  await page.reload();
  expect(await page.locator('h1').textContent()).toBe(before);
  await notice.waitFor();
  await notice.locator('a').click();
  await page.locator('h1', { hasText: 'The second edition' }).waitFor();
  expect(await notice.isVisible()).toBe(false);
  server.close();
  await page.reload();
  expect(await page.locator('h1').textContent()).toBe('The second edition');
  await page.context().close();
});

test('an edition that is only half uploaded is not taken', async () => {
  const page = await visit('tarrasch/index.html');
  await kept(page);
  await page.evaluate(async () => {
    const registration = await navigator.serviceWorker.ready;
    registration.addEventListener('updatefound', () => {
      const { installing } = registration;
      const note = () => Object.assign(globalThis, { outcome: installing?.state });
      installing?.addEventListener('statechange', note, { once: true });
    });
  });
  await publish('The second edition', true);
  const outcome = async () => {
    await update(page);
    return page.evaluate(() => Reflect.get(globalThis, 'outcome'));
  };
  await expect.poll(outcome, { interval: 500 }).toBe('redundant');
  expect(await page.locator('.edition').isVisible()).toBe(false);
  server.close();
  await page.reload();
  expect(await page.locator('.chapters li').count()).toBe(3);
  await page.context().close();
});

test('with no room left the course is read online, and half an edition is thrown away', async () => {
  const context = await newContext(demo().browser);
  await atOnce(context);
  const page = await context.newPage();
  const session = await context.newCDPSession(page);
  const { origin } = new URL(address);
  await session.send('Storage.overrideQuotaForOrigin', { origin, quotaSize: 60_000 });
  await context.addInitScript(() => {
    const { register } = ServiceWorkerContainer.prototype;
    ServiceWorkerContainer.prototype.register = function (...args) {
      const begun = register.apply(this, args);
      const note = () => Object.assign(globalThis, { isBegun: true });
      begun.then(note, note);
      return begun;
    };
  });
  await page.goto(`${address}tarrasch/isolated-pawn.html`);
  await expect.poll(() => page.evaluate(() => 'isBegun' in globalThis)).toBe(true);
  const left = () =>
    page.evaluate(async () => {
      const registration = await navigator.serviceWorker.getRegistration();
      const { installing, waiting, active } = registration ?? {};
      const workers = [installing, waiting, active].filter(Boolean).length;
      return { workers, editions: (await caches.keys()).length };
    });
  await expect.poll(left).toEqual({ workers: 0, editions: 0 });
  await page.goto(`${address}tarrasch/index.html`);
  expect(await page.locator('.chapters li').count()).toBe(3);
  await context.close();
});

test('two courses of one host keep out of each other', async () => {
  cpSync(site(), path.join(folder, 'other'), { recursive: true });
  const page = await visit('tarrasch/index.html');
  await kept(page);
  await page.goto(`${address}other/index.html`);
  await kept(page);
  server.close();
  for (const course of ['tarrasch', 'other']) {
    await page.goto(`${address}${course}/move-orders.html`);
    expect(await page.locator('h1').isVisible()).toBe(true);
  }
  const caches = await page.evaluate(() => self.caches.keys());
  expect(caches).toHaveLength(2);
  await page.context().close();
});

test('on the own machine what the server has comes first, whatever course was there before', async () => {
  const context = await newContext(demo().browser);
  await atOnce(context);
  const page = await context.newPage();
  await page.goto(`${server.address}tarrasch/index.html`);
  await kept(page);
  const file = path.join(site(), 'index.html');
  writeFileSync(file, readFileSync(file, 'utf8').replace(/<h1>[^<]*/, '<h1>Another course'));
  await page.reload();
  expect(await page.locator('h1').textContent()).toBe('Another course');
  server.close();
  await page.goto(`${server.address}tarrasch/isolated-pawn.html`);
  expect(await page.locator('h1').isVisible()).toBe(true);
  await context.close();
});
