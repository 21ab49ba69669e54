/** SVG pictures opened by themselves: a browser judges what the check of `media/` lets through. */
import { mkdir, mkdtemp, writeFile } from 'node:fs/promises';
import path from 'node:path';
import type { Browser, Frame, Page } from 'playwright-core';
import { PNG } from 'pngjs';
import { beforeAll, expect, inject, test } from 'vitest';
import { activeSvgs, plainSvgs } from '../../src/media/testing/svgs.ts';
import { multiple } from '../setup/runs.ts';
import { openPage, serveFolder, sharedBrowser } from './browser.ts';

let browser: Browser;
beforeAll(async () => {
  browser = await sharedBrowser();
});

/** Runs `use` with a page and the addresses of files on a host of their own. */
async function hosting(
  files: readonly string[],
  headers: Readonly<Record<string, string>>,
  use: (page: Page, addresses: readonly string[], done: readonly string[]) => Promise<void>,
): Promise<void> {
  const folder = await mkdtemp(path.join(inject('runFolder'), 'media-'));
  await mkdir(path.join(folder, 'media'));
  await Promise.all(
    files.map((text, index) => writeFile(path.join(folder, 'media', `${index}.svg`), text)),
  );
  const server = await serveFolder(folder, '/', headers);
  const { page } = await openPage(browser);
  const done: string[] = [];
  await page.exposeFunction('ran', () => done.push('ran'));
  await page.context().route(/fetched/, (route) => {
    done.push('fetched');
    return route.fulfill({ body: '' });
  });
  try {
    const addresses = files.map((_, index) => `${server.address}media/${index}.svg`);
    await use(page, addresses, done);
  } finally {
    await page.context().close();
    server.close();
  }
}

/** Opens a picture, and does there what a reader might. */
async function look(page: Page, address: string): Promise<void> {
  await page.goto(address);
  await page.keyboard.press('Tab');
  await page.mouse.click(5, 15);
  await page.evaluate(() => new Promise((resolve) => setTimeout(resolve, 30)));
}

test('a picture that is let through runs nothing and asks for nothing', async () => {
  await hosting(Object.values(plainSvgs), {}, async (page, addresses, done) => {
    for (const address of addresses) await look(page, address);
    expect(done).toEqual([]);
  });
});

// What it says of the examples changes with them and with the browser alone: the night is early enough.
test.runIf(multiple > 1)(
  'of those that are refused, many run or ask in this very browser',
  async () => {
    await hosting(Object.values(activeSvgs), {}, async (page, addresses) => {
      const acted = new Set<string>();
      const names = Object.keys(activeSvgs);
      const note = (frame: Frame | null) => {
        let outer = frame;
        while (outer?.parentFrame()?.parentFrame()) outer = outer.parentFrame();
        const index = Number(/^picture-(\d+)$/.exec(outer?.name() ?? '')?.[1] ?? Number.NaN);
        acted.add(names[index] ?? 'none of them');
      };
      await page.exposeBinding('actedHere', ({ frame }) => note(frame));
      await page.addInitScript('globalThis.ran = () => actedHere()');
      await page.context().route(/fetched/, (route) => {
        note(route.request().frame());
        return route.fulfill({ body: '' });
      });
      // All in one page: to open them one after the other took eleven seconds.
      const frames = addresses.map(
        (address, index) => `<iframe name="picture-${index}" src="${address}"></iframe>`,
      );
      const { origin } = new URL(addresses[0] ?? '');
      const style =
        '<style>body{margin:0}iframe{width:60px;height:60px;border:0;float:left}</style>';
      await page.route(`${origin}/`, (route) =>
        route.fulfill({ body: style + frames.join(''), contentType: 'text/html' }),
      );
      await page.goto(`${origin}/`);
      for (const index of addresses.keys()) {
        const box = await page.locator('iframe').nth(index).boundingBox();
        await page.mouse.click((box?.x ?? 0) + 5, (box?.y ?? 0) + 15);
      }
      for (const _ of addresses) await page.keyboard.press('Tab');
      // 42 of 69 in Chromium 156; others need another browser, an older one or other clicks.
      await expect.poll(() => acted.size).toBeGreaterThan(30);
      await expect
        .poll(() => [...acted])
        .toEqual(expect.arrayContaining(['script', 'onload', 'javascript: in a link']));
    });
  },
);

test('a picture with dots in itself is drawn under the strictest policy', async () => {
  const headers = { 'content-security-policy': "default-src 'self'" };
  const dots = plainSvgs['a picture of dots in itself'] ?? '';
  await hosting([dots], headers, async (page, [address = '']) => {
    const { origin } = new URL(address);
    const body = `<!doctype html><img src="${address}" alt="" width="90" height="90">`;
    await page.route(`${origin}/`, (route) =>
      route.fulfill({ body, headers: { ...headers, 'content-type': 'text/html' } }),
    );
    const said: string[] = [];
    page.on('console', (message) => said.push(message.text()));
    await page.goto(`${origin}/`);
    const shot = PNG.sync.read(await page.locator('img').screenshot());
    expect(said).toEqual([]);
    // The dot lies in the corner, the rest is the white of the page.
    expect(shot.data.subarray(0, 3)).not.toEqual(shot.data.subarray(-4, -1));
  });
});
