import { SaxesParser } from 'saxes';
import { expect, test } from 'vitest';
import { sitemapFiles } from './sitemap.ts';

// The protocol of sitemaps.org, version 0.9, from memory: a urlset of its namespace, in it url
// elements with one loc each, an absolute address below the sitemap's own folder, entities escaped.
test('the sitemap is well-formed and lists every page once, by its whole address', () => {
  const files = [
    '404.html',
    'a&b.html',
    'boards/iqp.html',
    'index.html',
    'print.html',
    'x.png',
    'zwei höfe.html',
  ];
  const [sitemap, ...more] = sitemapFiles('https://club.example/courses/one', files);
  const parser = new SaxesParser({ xmlns: true });
  const path: string[] = [];
  const found: string[] = [];
  parser.on('opentag', ({ local, uri }) => {
    expect(uri).toBe('http://www.sitemaps.org/schemas/sitemap/0.9');
    path.push(local);
  });
  parser.on('text', (text) => {
    if (path.join('/') === 'urlset/url/loc') found.push(text);
  });
  parser.on('closetag', () => path.pop());
  parser.write(String(sitemap?.content)).close();
  expect(found).toEqual([
    'https://club.example/courses/one/a%26b.html',
    'https://club.example/courses/one/',
    'https://club.example/courses/one/zwei%20h%C3%B6fe.html',
  ]);
  expect(more).toEqual([]);
});

test('only at the root of a host there is a robots.txt, and it leads to the sitemap', () => {
  const [, robots] = sitemapFiles('https://club.example', ['index.html']);
  expect(robots).toEqual({
    path: 'robots.txt',
    content: 'User-agent: *\nAllow: /\nSitemap: https://club.example/sitemap.xml\n',
  });
});
