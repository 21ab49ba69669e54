/** News of a course: files of `news/`, the page of all of them, the Atom feed. */
import { SaxesParser } from 'saxes';
import { describe, expect, test } from 'vitest';
import { checkCourse } from '../../src/check/index.ts';
import { buildCourse } from '../../src/model/index.ts';
import { readCourse } from '../../src/read/index.ts';
import type { RenderedSite } from '../../src/site/render/rendered-site.ts';
import { renderSite } from '../../src/site/render/site.ts';
import { shownOn } from '../../src/site/render/testing/shown-on.ts';

const chapter = '---\ntitle: One\n---\n\n```moves\n1. e4 e5 {:here[open]} 2. Nf3\n```\n';
const front = (date: string, title = `New on ${date}`) =>
  `---\ntitle: "${title}"\ndate: ${date}\n---\n\n`;

function courseWith(news: Readonly<Record<string, string>>, settings = '') {
  return buildCourse(
    readCourse({
      settings: { path: 'course.yaml', text: `title: A & B\nid: ab\nside: white\n${settings}` },
      chapters: [{ path: 'chapters/1.md', text: chapter }],
      games: [],
      media: ['media/a.png'],
      news: Object.entries(news).map(([name, text]) => ({ path: `news/${name}.md`, text })),
      problems: [],
    }),
  );
}

const render = (news: Readonly<Record<string, string>>, site?: string, settings?: string) =>
  renderSite(courseWith(news, settings), {
    assets: { scripts: { free: 'assets/free.js' }, styles: { free: 'assets/free.css' }, fonts: [] },
    offline: false,
    site,
  });

const newsOn = (site: RenderedSite) => shownOn(site, 'changes').flatMap(({ news }) => news);

const findings = (text: string) =>
  checkCourse(courseWith({ one: text })).diagnostics.map(
    ({ rule, severity, place, message }) =>
      `${place.file}:${place.start.line} ${severity} ${rule}: ${message}`,
  );

describe('files of news', () => {
  test('are ordered by date, the latest first, and link to the board', () => {
    const site = render({
      b: `${front('2026-01-02')}## Head\n\n[here](pos:open), [there](../chapters/1.md), ![a](media/a.png)`,
      c: front('2026-11-25'),
      a: `${front('2026-01-02')}Note[^1].\n\n[^1]: A note.`,
    });
    const news = newsOn(site);
    expect(news.map(({ id, date }) => [id, date])).toEqual([
      ['c', '2026-11-25'],
      ['b', '2026-01-02'],
      ['a', '2026-01-02'],
    ]);
    const [, b, a] = news;
    expect(b?.html).toContain('<h3 id="b-head">Head</h3>');
    expect(b?.html).toContain('href="1.html#open">here</a>, <a href="1.html">there</a>');
    expect(a?.html).toContain('href="#a-note-fn-1"');
    expect(a?.html).toContain('id="a-note-fn-1"');
    expect(b?.day).toBe('2 January 2026');
    expect(site.frame.feed).toBeUndefined();
  });

  test('what cannot be published is an error, a link that has grown stale a warning', () => {
    expect(findings('No front matter')).toEqual([
      'news/one.md:1 error chapter-unreadable: This news file has no front matter, so it has no title.',
    ]);
    expect(findings('---\ntitle: A\ndate: 2026-02-30\n---\n')).toEqual([
      'news/one.md:3 error chapter-unreadable: `date` must be a date as year, month and day, such as `2026-11-25`.',
    ]);
    expect(findings(`${front('2026-11-25')}:here[x]\n\n\`\`\`moves\n1. e4\n\`\`\`\n`)).toEqual([
      'news/one.md:6 error chapter-unreadable: `:here[…]` speaks of a position, and news shows none.',
      'news/one.md:8 error chapter-unreadable: A `moves` block stands in a chapter; news shows none.',
    ]);
    const stale = `${front('2026-11-25')}[one](pos:gone) [two](../chapters/9.md) [three](pos:open)`;
    expect(findings(stale)).toEqual([
      'news/one.md:6 warning news-link: No position of the course is named `gone`, so this is shown without a link.',
      'news/one.md:6 warning news-link: This link leads to ../chapters/9.md, and nothing of that name is published.',
    ]);
    expect(newsOn(render({ stale }))[0]?.html).toBe(
      '<p><span>one</span> two <a class="position-link" href="1.html#open">three</a></p>',
    );
  });
});

test('news shows boards, by name, FEN or moves, and tells what is none', () => {
  const text = `${front('2026-11-25')}- One\n\n\`\`\`diagram at="open"\ncaption: It is [here](pos:open).\n\`\`\`\n\n\`\`\`diagram after="1. d4 d5"\nplan: c2-c4\n\`\`\`\n`;
  const site = render({ one: text }, 'https://example.org');
  const html = newsOn(site)[0]?.html ?? '';
  expect(html.match(/<svg class="board"/g)).toHaveLength(2);
  expect(html).toContain(
    '<a class="still position-link" href="1.html#open" title="Show on the board"><svg',
  );
  expect(html).toContain('It is <a class="position-link" href="1.html#open">here</a>.');
  // A reader of feeds has neither our style sheet nor our pieces.
  const feed = site.files.flatMap(({ make }) => make()).find(({ path }) => path === 'feed.xml');
  expect(feed?.content).toMatch(/img src="https:\/\/example\.org\/images\/news\/one-2\.png"/);
  expect(feed?.content).not.toContain('svg');
  const broken = 'fen="8/8/8/8/8/8/8/8 w - - 0 1"|after="1. e5"|at="gone"|from="open"'
    .split('|')
    .map((attribute) => `\`\`\`diagram ${attribute}\n\`\`\`\n`)
    .join('\n');
  expect(findings(front('2026-11-25') + broken)).toEqual([
    'news/one.md:6 error chapter-unreadable: This FEN is no position: White has no king.',
    "news/one.md:9 error chapter-unreadable: `e5` cannot be played: it is White's move here, and the pawn on e7 is Black's.",
    'news/one.md:12 warning news-link: No position of the course is named `gone`, so this board is not shown.',
    'news/one.md:15 error chapter-unreadable: This diagram does not say which position it shows.',
    'news/one.md:15 error chapter-unreadable: A `diagram` block has no attribute `from`.',
  ]);
});

describe('the feed', () => {
  const news = {
    old: front('2026-01-02', 'Old <b>'),
    new: `${front('2026-11-25')}[here](pos:open) ![a](media/a.png)`,
  };
  const feedOf = (settings?: string) =>
    render(news, 'https://example.org/course/', settings)
      .files.flatMap(({ make }) => make())
      .find(({ path }) => path === 'feed.xml')?.content;
  const read = (settings?: string) => parse(feedOf(settings) ?? '');

  test('is there where the site has an address', () => {
    expect(render(news, 'https://example.org').frame.feed).toBe('feed.xml');
    expect(render({}, 'https://example.org').frame.feed).toBeUndefined();
    expect(render(news).files.flatMap(({ make }) => make().map(({ path }) => path))).not.toContain(
      'feed.xml',
    );
  });

  test('has what RFC 4287 requires: 4.1.1 of a feed, 4.1.2 of an entry', () => {
    for (const settings of ['', 'author: Somebody\n']) {
      const { root } = read(settings);
      expect(root.name).toBe('feed');
      expect(root.attributes.xmlns).toBe('http://www.w3.org/2005/Atom');
      const entries = root.children.filter(({ name }) => name === 'entry');
      expect(entries).toHaveLength(2);
      for (const part of [root, ...entries]) {
        for (const name of ['id', 'title', 'updated']) {
          expect(
            part.children.filter((child) => child.name === name),
            name,
          ).toHaveLength(1);
        }
        // 4.2.6: an IRI; 3.3: dates conform to RFC 3339.
        expect(() => new URL(textOf(part, 'id'))).not.toThrow();
        expect(textOf(part, 'updated')).toMatch(/^\d{4}-\d\d-\d\dT\d\d:\d\d:\d\dZ$/);
        // 4.1.1, 4.1.2: no two `alternate` links of one type and language.
        const alternates = part.children.filter(({ attributes }) => attributes.rel === 'alternate');
        expect(alternates).toHaveLength(1);
      }
      const ids = entries.map((entry) => textOf(entry, 'id'));
      expect(new Set(ids).size).toBe(ids.length);
      // 4.1.1: an author, unless every entry has one; 4.2.1: with one name (3.2.1).
      const [author] = root.children.filter(({ name }) => name === 'author');
      expect(author && textOf(author, 'name')).toBe(settings === '' ? 'A & B' : 'Somebody');
      expect(textOf(root, 'updated')).toBe('2026-11-25T00:00:00Z');
    }
  });

  test('is the same whenever it is built, and its addresses are whole', () => {
    expect(feedOf()).toBe(feedOf());
    const [latest, old] = read().root.children.filter(({ name }) => name === 'entry');
    expect(latest && textOf(latest, 'id')).toBe('tag:example.org,2026-11-25:ab/new');
    expect(old && textOf(old, 'title')).toBe('Old <b>');
    const html = latest ? textOf(latest, 'content') : '';
    expect(html).toContain('href="https://example.org/course/1.html#open"');
    expect(html).toContain('src="https://example.org/course/media/a.png"');
  });
});

interface Xml {
  readonly name: string;
  readonly attributes: Readonly<Record<string, string>>;
  readonly children: Xml[];
  text: string;
}

/** @throws where it is not well-formed. */
function parse(xml: string): { root: Xml } {
  const top: Xml = { name: '', attributes: {}, children: [], text: '' };
  const open = [top];
  const parser = new SaxesParser();
  parser.on('error', (error) => {
    throw error;
  });
  parser.on('opentag', ({ name, attributes }) => {
    const element: Xml = {
      name,
      attributes: attributes as Record<string, string>,
      children: [],
      text: '',
    };
    open.at(-1)?.children.push(element);
    open.push(element);
  });
  parser.on('text', (text) => {
    const last = open.at(-1);
    if (last) last.text += text;
  });
  parser.on('closetag', () => open.pop());
  parser.write(xml).close();
  const [root] = top.children;
  if (!root) throw new Error('no element');
  return { root };
}

function textOf(element: Xml, name: string): string {
  return element.children.find((child) => child.name === name)?.text ?? '';
}
