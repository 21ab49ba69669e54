/** Every kind of page: accessible in light and dark, readable without script, light, and from a disk. */
import { readFileSync } from 'node:fs';
import path from 'node:path';
import { pathToFileURL } from 'node:url';
import { gzipSync } from 'node:zlib';
import type { Page } from 'playwright-core';
import { beforeAll, describe, expect, test } from 'vitest';
import { parts } from '../../src/look/parts.ts';
import { someOf } from '../setup/runs.ts';
import { darkViolations, violations } from './axe.ts';
import { onPage, openPage, openWhole, pageFiles, phone, useDemo, windows } from './browser.ts';
import { smallTargets } from './small-targets.ts';
import { type Hosted, strict, under } from './under-policy.ts';

const demo = useDemo();

/** What is seen of a page that is opened on a phone, with a finger, and then made wide. */
interface Seen {
  readonly name: string;
  readonly light: readonly string[];
  readonly dark: readonly string[];
  readonly smallTargets: readonly string[];
  /** What stands around figurines that the end of a line may cut off their moves. */
  readonly loose: readonly string[];
  /** By how many pixels it is wider than its window. */
  readonly over: { readonly phone: number; readonly wide: number };
}

async function see(page: Page, name: string): Promise<Seen> {
  const over = () => page.evaluate(() => document.documentElement.scrollWidth - innerWidth);
  // The handout's moves, thousands of them, are those of the chapters' pages.
  const exclude = ['.in-columns .moves'];
  await page.setViewportSize(windows.phone);
  // What scripts make is to be there; text far from the window is laid out when a hand comes.
  await openWhole(page, name);
  // Twice: where it rested on the page before, the first is no move.
  for (const at of [9, 19]) await page.mouse.move(at, at);
  await page.locator('html:not(.piecemeal) h1').first().waitFor();
  const onPhone = {
    smallTargets: await page.evaluate(smallTargets),
    loose: await page.evaluate(() =>
      [...document.querySelectorAll('.figurine:not(.always)')]
        .flatMap(({ parentElement }) => parentElement ?? [])
        .filter((parent) => getComputedStyle(parent).textWrapMode !== 'nowrap')
        .map(({ outerHTML }) => outerHTML),
    ),
    over: await over(),
    dark: await darkViolations(page, { exclude }),
  };
  await page.setViewportSize(windows.wide);
  const light = await violations(page, { exclude });
  return { name, ...onPhone, light, over: { phone: onPhone.over, wide: await over() } };
}

describe('every page', () => {
  let refused: readonly string[];
  let pages: readonly Seen[];

  // Each is opened once for all that is only looked at, on a host with the strictest of policies.
  beforeAll(async () => {
    const seen: Seen[] = [];
    const use = async ({ page, address }: Hosted) => {
      for (const name of pageFiles(demo().site)) seen.push(await see(page, address + name));
      // Of the pages for frames, which are all alike, one.
      for (const name of ['boards/list.html', 'boards/bg5.html']) await page.goto(address + name);
    };
    refused = await under(demo(), strict, use, phone);
    pages = seen;
    expect(pages.length).toBeGreaterThan(15);
  });

  const each = <Value>(what: (page: Seen) => Value) =>
    pages.map((page) => ({ name: page.name, found: what(page) }));
  const none = (found: unknown) => each(() => found);

  test('has nothing that axe-core finds, in light and in the dark', () => {
    expect(each(({ light, dark }) => [...light, ...dark])).toEqual(none([]));
  });

  test('has targets of 24 by 24 pixels, or as far from others: WCAG 2.2, 2.5.8 Target Size (Minimum)', () => {
    expect(each((page) => page.smallTargets)).toEqual(none([]));
  });

  test('lets no line end between a figurine and its square', () => {
    expect(each(({ loose }) => loose)).toEqual(none([]));
  });

  test('is as wide as its window', () => {
    expect(each(({ over }) => over)).toEqual(none({ phone: 0, wide: 0 }));
  });

  // What readers do there is tried in `policy.test.ts`.
  test('has no fault, and nothing that the strictest of policies refuses', () => {
    expect(refused).toEqual([]);
  });
});

test('without script every page has its text, unique ids, links that lead somewhere, and asks nobody else', async () => {
  const { page, faults } = await openPage(demo().browser, { javaScriptEnabled: false });
  for (const name of someOf(pageFiles(demo().site), 9)) {
    await page.goto(demo().address + name);
    expect(await page.locator('h1').first().isVisible(), name).toBe(true);
    // Chromium lets the test look into a page that may run no script of its own.
    const { twice, nowhere } = await page.evaluate(() => {
      const ids = [...document.querySelectorAll('[id]')].map(({ id }) => id);
      const links = [...document.querySelectorAll('a[href^="#"]')].map((link) =>
        decodeURIComponent((link.getAttribute('href') ?? '').slice(1)),
      );
      return {
        twice: ids.filter((id, index) => ids.indexOf(id) !== index),
        nowhere: links.filter((id) => id !== '' && !ids.includes(id)),
      };
    });
    expect({ twice, nowhere }, name).toEqual({ twice: [], nowhere: [] });
  }
  expect(faults.list).toEqual([]);
  await page.context().close();
});

test('without script the moves, diagrams, questions and folded answers are there', async () => {
  const { page, faults } = await openPage(demo().browser, { javaScriptEnabled: false });
  await page.goto(`${demo().address}isolated-pawn.html`);
  expect(await page.locator('a.move').count()).toBeGreaterThan(100);
  expect(await page.locator('.diagram svg').first().isVisible()).toBe(true);
  const exercise = page.locator('.exercise').first();
  expect(await exercise.locator('svg').first().isVisible()).toBe(true);
  expect(await exercise.textContent()).toContain('What do you play?');
  const answer = exercise.locator('details').filter({ hasText: 'Nb4' });
  expect(await answer.getAttribute('open')).toBe(null);
  expect(faults.list).toEqual([]);
  await page.context().close();
});

test('a double-click on the file is enough', async () => {
  const { page } = await openPage(demo().browser);
  await page.goto(`${pathToFileURL(path.join(demo().site, 'isolated-pawn.html'))}#tarrasch`);
  await page.locator('.beside svg.board').waitFor();
  expect(await page.locator('.board-caption').textContent()).toContain('after 3...c5');
  await page.context().close();
});

test('a chapter is light: 60 KB with its script and style, of which 20 KB script, compressed', () => {
  const size = (file: string) =>
    gzipSync(readFileSync(path.join(demo().site, file)), { level: 9 }).length;
  const page = readFileSync(path.join(demo().site, 'isolated-pawn.html'), 'utf8');
  const sum = (tag: RegExp) =>
    [...page.matchAll(tag)].reduce((all, [, file = '']) => all + size(file), 0);
  const html = size('isolated-pawn.html');
  const css = sum(/<link rel="stylesheet" href="([^"]+)"/g);
  const js = sum(/<script(?: defer)? src="([^"]+)"/g);
  expect(Math.min(css, js)).toBeGreaterThan(0);
  const moves = page.split('class="move"').length - 1;
  console.log(
    `isolated-pawn.html, ${moves} moves: HTML ${html}, CSS ${css}, script ${js} bytes compressed`,
  );
  expect(js).toBeLessThan(20_000);
  expect(html + css + js).toBeLessThan(60_000);
});

test('a page of the author’s is led to from every page, and text alone loads nothing that boards need', async () => {
  const read = (file: string) => readFileSync(path.join(demo().site, file), 'utf8');
  const imprint = read('imprint.html');
  expect(imprint).not.toMatch(/<svg|offline\.js/);
  expect([...imprint.matchAll(/<script[^>]* src="assets\/(\w+)/g)].map(([, name]) => name)).toEqual(
    ['begin'],
  );
  expect(gzipSync(imprint).length).toBeLessThan(2_000);
  expect(read('about.html')).toContain('class="diagram"');
  const { page, faults } = await openPage(demo().browser, { viewport: windows.phone });
  await page.goto(`${demo().address}isolated-pawn.html`);
  await page.locator('.all-pages summary').click();
  await page.locator('.all-pages').getByRole('link', { name: 'The club' }).click();
  await page.getByRole('heading', { level: 1, name: 'About the club' }).waitFor();
  await page.locator('.bottom').getByRole('link', { name: 'Imprint' }).click();
  await page.getByText('Responsible for this site').waitFor();
  await page.emulateMedia({ media: 'print' });
  expect(await page.locator('.bottom nav').isVisible()).toBe(false);
  // It is no chapter: nothing comes next.
  expect(await page.locator('.chapter-end, .number').count()).toBe(0);
  expect(faults.list).toEqual([]);
  await page.context().close();
});

test('every part that a theme may name is on some page', async () => {
  await onPage(demo().browser, async (page) => {
    // The demo quotes nobody and shows no code: what they are named by is that of Markdown itself.
    const left = new Map(parts.map(({ name, selector }) => [name, selector]));
    for (const name of ['quotation', 'code']) left.delete(name);
    for (const file of ['index.html', 'isolated-pawn.html']) {
      await page.goto(demo().address + file);
      const found = await page.evaluate(
        (all) => all.filter(([, selector]) => document.querySelector(selector)),
        [...left],
      );
      for (const [name] of found) left.delete(name);
    }
    expect([...left.keys()]).toEqual([]);
  });
});
