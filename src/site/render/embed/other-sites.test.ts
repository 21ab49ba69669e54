/** What other sites take of a course: answers of oEmbed, and the list of boards that its author copies from. */
import { expect, test } from 'vitest';
import { courseOf } from '../../../model/testing/course-of.ts';
import { renderSite } from '../site.ts';
import { shownOn } from '../testing/shown-on.ts';

const assets = { scripts: {}, styles: {}, fonts: [] };

const chapterOf = (names: readonly string[]) =>
  names.map((name) => `\`\`\`moves\n1. e4 {:here[${name}]}\n\`\`\``).join('\n\n');

// oEmbed 1.0 (oembed.com), sections 2.3.4, 2.3.4.4 and 4.
test('a page for frames leads to an answer that oEmbed knows', () => {
  const course = courseOf(chapterOf(['one', 'A “b” & c'.replaceAll(/\W/g, '-')]));
  const made = (site?: string) =>
    renderSite(course, { assets, offline: false, site })
      .files.filter(({ beginning }) => beginning === 'boards/')
      .flatMap(({ make }) => make());
  const files = new Map(made('https://club.example/t').map((file) => [file.path, file.content]));
  const page = String(files.get('boards/one.html'));
  const [link = ''] = /<link[^>]*json\+oembed[^>]*>/.exec(page) ?? [];
  expect(link).toMatch(
    / rel="alternate"[^>]* href="https:\/\/club\.example\/t\/boards\/one\.json" title="/,
  );
  const answer = JSON.parse(String(files.get('boards/one.json')));
  expect(answer).toMatchObject({
    type: 'rich',
    version: '1.0',
    html: expect.stringMatching(
      /^<iframe src="https:\/\/club\.example\/t\/boards\/one\.html" width="400" height="476"/,
    ),
    width: 400,
    height: 476,
    thumbnail_url: 'https://club.example/t/images/positions/one.png',
    thumbnail_width: 560,
    thumbnail_height: 560,
  });
  for (const [name, value] of Object.entries(answer)) {
    expect(typeof value, name).toBe(/width|height/.test(name) ? 'number' : 'string');
  }
  // Without an address there is nothing that another site could ask for.
  expect(made().filter(({ path, content }) => /json/.test(path + content))).toEqual([]);
});

test('a short list of boards is one page, a long one is told by chapters', () => {
  const listOf = (counts: readonly number[]) => {
    const chapters = counts.map((count, chapter): [string, string] => [
      `chapters/${chapter + 1}.md`,
      chapterOf(Array.from({ length: count }, (_, index) => `p${chapter}-${index}`)),
    ]);
    const site = renderSite(courseOf(Object.fromEntries(chapters)), { assets, offline: false });
    const paths = site.pages.filter(({ name }) => name === 'boards').map(({ path }) => path);
    return { paths, lists: shownOn(site, 'boards') };
  };
  expect(listOf([0]).paths).toEqual([]);
  const short = listOf([60, 0, 40]);
  expect(short.paths).toEqual(['boards/list.html']);
  expect(short.lists[0]?.embeds.map(({ entries }) => entries.length)).toEqual([60, 40]);
  const long = listOf([60, 0, 41, 130, 1]);
  expect(long.paths).toEqual([
    'boards/list.html',
    ...[1, 2, 3, 4].map((page) => `boards/lists/${page}.html`),
  ]);
  const [index, ...pages] = long.lists;
  expect(index?.embeds).toEqual([]);
  expect(index?.parts.map(({ href, count }) => [href, count])).toEqual([
    ['lists/1.html#1', 60],
    ['lists/2.html#3', 41],
    ['lists/3.html#4', 130],
    ['lists/4.html#5', 1],
  ]);
  expect(pages.map(({ path }) => path)).toEqual(long.paths.slice(1));
  expect(pages.map(({ embeds }) => embeds.map(({ id }) => id))).toEqual([
    ['1'],
    ['3'],
    ['4'],
    ['5'],
  ]);
});
