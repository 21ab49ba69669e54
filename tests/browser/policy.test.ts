/**
 * The course on a host with a policy of its own. Content Security Policy Level 3: two policies hold
 * both, so what the header forbids the page's own policy cannot allow.
 */
import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Element } from 'hast';
import { raw } from 'hast-util-raw';
import type { Page } from 'playwright-core';
import { visit } from 'unist-util-visit';
import { describe, expect, test } from 'vitest';
import { hostPolicy } from '../../src/site/security-policy.ts';
import { useDemo } from './browser.ts';
import { strict, under } from './under-policy.ts';

const demo = useDemo();

/** What a reader does on a page, by its name; each ends when the page has answered. */
const acts: Readonly<Record<string, (page: Page) => Promise<void>>> = {
  'isolated-pawn.html': async (page) => {
    await page.locator('.beside svg.board').waitFor();
    await page.locator('.moves .move').nth(3).click();
    await expect.poll(() => page.locator('.moves .move[aria-current]').count()).toBe(1);
    const exercise = page.locator('.exercise').first();
    await exercise.scrollIntoViewIfNeeded();
    await exercise.getByRole('textbox').fill('Nb4');
    await exercise.getByRole('button', { name: 'Play' }).click();
    await exercise.getByText('Right.').first().waitFor();
    await page.emulateMedia({ media: 'print' });
    await page.emulateMedia({ media: 'screen' });
  },
  'practice.html': async (page) => {
    await page.getByRole('button', { name: /^Begin/ }).click();
    await page.locator('.practice-board svg.board').waitFor();
    await page.locator('.move-entry input').fill('d5');
    await page.keyboard.press('Enter');
    const said = page.locator('.practice-talk [role=status]');
    await expect.poll(() => said.textContent()).toContain('Good. You will be asked');
  },
  'compare.html': async (page) => {
    const worker = page.waitForEvent('worker');
    await page.getByRole('textbox', { name: 'Or paste games' }).fill('1. d4 d5 2. c4 e6 3. a3 *');
    await page.getByRole('button', { name: 'Compare' }).click();
    await worker;
    await page.locator('.compare-result h2').waitFor();
  },
  'tree.html': (page) => page.getByRole('button', { name: 'Unfold everything' }).click(),
  'search.html': async (page) => {
    await page.fill('#page-position', '1.c4 e6 2.d4 d5');
    await page.press('#page-position', 'Enter');
    await page.locator('.position-card svg.board').waitFor();
    await page.locator('.for-board summary').click();
    await page.locator('.for-board svg.board').waitFor();
  },
  'print.html': (page) => page.emulateMedia({ media: 'print' }),
  'boards/bg5.html': async (page) => {
    await page.getByRole('button', { name: 'Forward', exact: true }).click();
    await expect.poll(() => page.locator('.board-caption').textContent()).toBe('after 7.Bxe7');
  },
};

/** What a policy without `'unsafe-inline'` and `data:` refuses of an element. */
function refusedOf({ tagName, properties, children }: Element): string[] {
  const { type = 'text/javascript', src } = properties;
  // A data block runs nothing (HTML Standard, "prepare the script element").
  const isData = type === 'application/ld+json';
  return [
    ...(tagName === 'style' ? ['<style>'] : []),
    ...(tagName === 'script' && src === undefined && !isData && children.length > 0
      ? ['<script> without src']
      : []),
    ...Object.entries(properties).flatMap(([name, value]) =>
      /^(?:style$|on[a-z])/i.test(name) || /^\s*data:|url\(\s*['"]?data:/i.test(String(value))
        ? [`<${tagName} ${name}="${value}">`]
        : [],
    ),
  ];
}

function refusedIn(file: string, text: string): string[] {
  if (file.endsWith('.css')) return text.match(/data:|@import|https?:\/\//g) ?? [];
  const found: string[] = [];
  const tree = raw({ type: 'root', children: [{ type: 'raw', value: text }] });
  visit(tree, 'element', (element) => {
    found.push(...refusedOf(element));
  });
  return found;
}

test('no file of the site has a script, a style or a picture in itself', () => {
  const files = readdirSync(demo().site, { recursive: true, encoding: 'utf8' }).filter((name) =>
    /\.(?:html|css|svg)$/.test(name),
  );
  expect(files.length).toBeGreaterThan(100);
  for (const file of files) {
    expect(refusedIn(file, readFileSync(path.join(demo().site, file), 'utf8')), file).toEqual([]);
  }
});

test.each([
  ['a.html', '<!doctype html><head><script>1</script>'],
  ['a.html', '<!doctype html><p onclick="a()">'],
  ['a.html', '<p style="color:red">'],
  ['a.html', '<style>p{}</style>'],
  ['a.html', '<link rel="icon" href="data:,">'],
  ['a.svg', '<svg><rect style="fill:red"/></svg>'],
  ['a.css', 'p{mask:url(data:image/svg+xml,x)}'],
])('as it would be in %s: %s', (file, text) => expect(refusedIn(file, text)).toHaveLength(1));

async function searchWords(page: Page, words: string): Promise<void> {
  await page.fill('#page-words', words);
  await page.press('#page-words', 'Enter');
}

/** That it refuses nothing of a page that is only opened, `pages.test.ts` tests on every page. */
test('the strictest of policies refuses nothing that a page needs when it is used', async () => {
  const faults = await under(demo(), strict, async ({ page, address }) => {
    for (const [name, act] of Object.entries(acts)) {
      await page.goto(address + name);
      await act(page);
      await page.emulateMedia({ media: null });
    }
  });
  expect(faults).toEqual([]);
});

test('a board, as an element or in a frame, on a page of the same host', async () => {
  const faults = await under(demo(), strict, async ({ page, addPage }) => {
    const host = await addPage(
      'host.html',
      '<!doctype html><html lang="en"><title>Host</title><script src="boards/board.js" defer></script>' +
        '<iframe src="boards/bg5.html" title="A board"></iframe>' +
        '<course-board moves="e2e4 e7e5" sans="e4 e5" mark="e5" plan="g1-f3"></course-board>',
    );
    await page.goto(host);
    const board = page.locator('course-board').first();
    await board.getByRole('button', { name: 'Forward', exact: true }).click();
    await expect.poll(() => board.locator('.board-caption').textContent()).toBe('after 1.e4');
    await page.frameLocator('iframe').locator('svg.board').waitFor();
  });
  expect(faults).toEqual([]);
});

describe('the search by words needs WebAssembly', () => {
  test('and says plainly what the host must allow; names are found all the same', async () => {
    const faults = await under(demo(), strict, async ({ page, address }) => {
      await page.goto(`${address}search.html`);
      await searchWords(page, 'queens gambit');
      const section = page.locator('section:has(.for-words)');
      await section.getByText("'wasm-unsafe-eval'").waitFor();
      expect(await section.locator('.status').textContent()).toContain('Content-Security-Policy');
      expect(await section.locator('.found-list').first().textContent()).toContain('2...e6');
    });
    expect(faults).toEqual([]);
  });

  // So it does without a network: `offline.test.ts`.
  test('finds under the header of the handbook', async () => {
    const faults = await under(demo(), hostPolicy, async ({ page, address }) => {
      await page.goto(`${address}search.html`);
      await searchWords(page, 'student lost a league game');
      const chapter = page.locator('section:has(.for-words) .found-list .found-chapter');
      await chapter.getByText('Other doors to the same room').waitFor();
    });
    expect(faults).toEqual([]);
  });
});

describe('what the test would see', () => {
  test.each([
    ['a script in the page', '<script>1</script>', 'script-src-elem inline'],
    ['a style attribute', '<p style="color:red">', 'style-src-attr inline'],
    ['a picture in an address', '<img alt="" src="data:image/gif;base64,AAAA">', 'img-src data'],
  ])('%s', async (_, html, refused) => {
    const faults = await under(demo(), strict, async ({ page, addPage }) => {
      await page.goto(await addPage('bad.html', `<!doctype html><title>Bad</title>${html}`));
    });
    expect(faults.join('\n')).toContain(refused);
  });

  // HTML Standard, "script", type: a data block; no policy of CSP Level 3 speaks of one.
  test('a block of data for search engines is none of it', async () => {
    const block = '<script type="application/ld+json">{"@type":"Course"}</script>';
    const faults = await under(demo(), strict, async ({ page, addPage }) => {
      await page.goto(await addPage('data.html', `<!doctype html><title>Data</title>${block}`));
    });
    expect(faults).toEqual([]);
  });
});
