/** The search by words in a course so long that its index comes in parts. */
import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { wordFolders } from '../../src/contract/index.ts';
import { indexWords } from '../../src/site/build/word-index.ts';
import { wordIndexes } from '../../src/site/build/word-indexes.ts';
import { onPage, serveFolder, useDemo } from './browser.ts';

const demo = useDemo();
const folder = mkdtempSync(path.join(tmpdir(), 'linewright-words-'));
let server: Awaited<ReturnType<typeof serveFolder>>;

const themes = ['gambit', 'outpost', 'isolated pawn', 'fianchetto', 'minority attack', 'pinned'];
const chapters = Array.from({ length: 240 }, (_, index) => {
  const html = `<p>The ${themes[index % 6]} of line ${index} and the ${themes[(index * 7) % 5]}.</p>`;
  return {
    id: `line-${index}`,
    number: index + 1,
    title: `Line ${index}`,
    card: '',
    html,
    sections: [],
    met: {},
  };
});

/** Searches both, as `browser/search/word-index.ts` does. */
const script = `
import * as whole from './whole/pagefind.js';
import * as parts from './parts/pagefind/pagefind.js';
const at = (folder) => new URL('parts/' + folder + '/', document.baseURI).href;
await parts.init();
for (const folder of ${JSON.stringify(wordFolders(chapters.length).slice(1))}) await parts.mergeIndex(at(folder));
const urls = async (index, words) => {
  const { results } = await index.search(words);
  return (await Promise.all(results.map((each) => each.data()))).map((each) => each.raw_url).sort();
};
globalThis.searchBoth = async (words) => ({ whole: await urls(whole, words), parts: await urls(parts, words) });
`;

function write(file: string, content: string | Uint8Array) {
  mkdirSync(path.dirname(path.join(folder, file)), { recursive: true });
  writeFileSync(path.join(folder, file), content);
}

beforeAll(async () => {
  write(
    'index.html',
    '<!doctype html><html lang="en"><title>x</title><script type="module" src="x.js"></script>',
  );
  write('x.js', script);
  const parts = wordIndexes('en', chapters.length);
  for (const chapter of chapters) parts.add({ id: chapter.id, page: () => chapter });
  for (const part of parts.parts()) {
    for (const file of await part.files((_kind, _inputs, make) => make())) {
      write(`parts/${file.path}`, file.content);
    }
  }
  const pages = chapters.map(({ id, title, html }) => ({
    url: `${id}.html`,
    content: `<!doctype html><html lang="en"><body><main><h1>${title}</h1><p></p>${html}</main>`,
  }));
  for (const { path: file, content } of await indexWords(pages, true))
    write(`whole/${file}`, content);
  server = await serveFolder(folder);
});
afterAll(() => {
  server.close();
  rmSync(folder, { recursive: true, force: true });
});

test('finds what one index of all chapters finds', () =>
  onPage(demo().browser, async (page) => {
    await page.goto(server.address);
    await page.waitForFunction('globalThis.searchBoth');
    const found: { words: string; whole: string[]; parts: string[] }[] = [];
    for (const words of [...themes, '"line 77"', 'nothing']) {
      const urls = await page.evaluate(`searchBoth(${JSON.stringify(words)})`);
      found.push({ words, ...(urls as { whole: string[]; parts: string[] }) });
    }
    for (const { words, whole, parts } of found) expect(parts, words).toEqual(whole);
    expect(found.map(({ whole }) => whole.length).slice(-2)).toEqual([1, 0]);
    expect(found[0]?.whole.length).toBeGreaterThan(60);
  }));
