import { expect, test } from 'vitest';
import { rehouse } from './rehouse.ts';

const page = `<!doctype html><html lang="de" dir="ltr"><head><title>One – All</title>
<meta name="description" content="Said &quot;so&quot;.">
<link rel="stylesheet" href="assets/course.css"><link rel="stylesheet" href="theme.0a1b.css"><script src="assets/begin.js" data-settings="assets/s.js"></script></head>
<body class="chapter" data-course="italian"><svg class="board-sprite"></svg>
<header class="top"><nav class="few"><a href="index.html">Contents</a><a href="practice.html">Practice</a></nav>
<nav class="languages" aria-label="Languages"><a href="de/one.html" lang="de" hreflang="de">Deutsch</a></nav></header>
<main class="reading" id="page-text" data-solver="assets/x.js"><h1>One &amp; only</h1>
<a href="two.html#knight">two</a><a href="#here">here</a><a href="https://a.example/">out</a><img src="media/a.png">
<i data-also="two.html#x"></i></main></body></html>`;

const { title, description, html } = rehouse(page, {
  root: '/club/italian/',
  file: 'one.html',
  sheet: 'assets/hosted.css',
  address: 'assets/address.js',
});

test('title and description are the chapter’s', () => {
  expect(title).toBe('One & only');
  expect(description).toBe('Said "so".');
});

test('text, boards, scripts and pages of the course stand in one element, and nothing of its frame', () => {
  expect(html).toMatch(
    /^<div class="linewright chapter" lang="de" dir="ltr" data-course="italian">/,
  );
  expect(html).toContain('<div class="reading course-main" id="page-text"');
  expect(html).toContain('<svg class="board-sprite">');
  expect(html).toContain('<div class="pages-of-course"><nav><a href="/club/italian/">Contents</a>');
  expect(html).toContain('<link rel="stylesheet" href="/club/italian/theme-hosted.0a1b.css">');
  expect(html).toMatch(/<nav class="languages"[^>]*><a href="\/club\/italian\/de\/one\.html"/);
  expect(html).not.toMatch(/<(?:main|header|html|body|title|meta)\b|course\.css/);
});

test('addresses lead from the root, but for those within the page, elsewhere, or looked up by scripts', () => {
  for (const address of ['two.html#knight', 'assets/x.js', 'media/a.png', 'assets/begin.js']) {
    expect(html).toContain(`"/club/italian/${address}"`);
  }
  expect(html).toMatch(/href="#here".*href="https:\/\/a\.example\/"/s);
  expect(html).toContain('data-also="two.html#x"');
  expect(html).toContain('data-page="/club/italian/one.html"');
});
