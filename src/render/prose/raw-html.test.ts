import { toHtml } from 'hast-util-to-html';
import { parseFragment, serialize } from 'parse5';
import { expect, test } from 'vitest';
import { addressAfter } from '../../contract/testing/address-after.ts';
import { readableText, renderCourse } from '../../site/render/testing/render-course.ts';
import { cleanRawHtml } from './raw-html.ts';

function clean(value: string): string {
  const tree = { type: 'root' as const, children: [{ type: 'raw' as const, value }] };
  return toHtml(cleanRawHtml(tree as never, { give: (id) => id }));
}

test('no picture is fetched from another host, however its address is written', () => {
  for (const address of [
    'https://host/x.png',
    '//host/x.png',
    '\\\\host\\x.png',
    '/\\host/x.png',
    ' //host/x.png',
    'HTTP://host/x.png',
  ]) {
    expect(clean(`<img src="${address}" alt="a">`), address).not.toContain('host');
  }
  const picture =
    '<picture><source srcset="https://host/x.png"><img srcset="//host/y.png 2x" alt="a"></picture>';
  expect(clean(picture)).not.toContain('host');
  expect(clean('<img src="media/x.png" alt="a">')).toContain('src="media/x.png"');
});

test('no picture stands in its address, which a host may forbid', () => {
  for (const address of ['data:image/gif;base64,AAAA', ' DATA:,x', 'blob:x', 'javascript:a()']) {
    expect(clean(`<img src="${address}" alt="a">`), address).toBe('<img alt="a">');
  }
});

test('what could run goes, what is text stays', () => {
  const html = clean(
    '<b onclick="a()">bold</b><script>a()</script><a href="javascript:a()">link</a><style>*{}</style>',
  );
  expect(html).toBe('<b>bold</b><a>link</a>');
});

test('links keep their classes', () => {
  expect(clean('<a class="prose-move" href="#x">1.e4</a><!-- n -->')).toContain(
    'class="prose-move"',
  );
});

test('blocks that hold moves keep them beside raw HTML', () => {
  const exercise =
    '```exercise after="1. e4"\nask: And now?\nanswer: 1... e5 2. Nf3\nwrong: 1... f6\n```\n';
  const [plain = ''] = renderCourse([exercise]);
  const [mixed = ''] = renderCourse([`<b>HTML</b>\n\n${exercise}`]);
  expect(readableText(mixed)).toBe(`HTML\n${readableText(plain)}`);
  expect(readableText(plain).match(/1\.\.\. f6/g)).toHaveLength(2);
});

test('an id that the site has given already stays where it led', () => {
  const move = addressAfter('e4');
  const [html = ''] = renderCourse([
    `<div id="${move}">mine</div>\n\n<p id="x">one</p>\n\n<p id="x">two</p>\n\n## x\n\n` +
      '```moves\n1. e4 e5 2. Nf3\n```\n',
  ]);
  const ids = [...html.matchAll(/ id="([^"]*)"/g)].map(([, id]) => id ?? '');
  expect(new Set(ids).size).toBe(ids.length);
  expect(html).toContain(`<a class="move" id="${move}"`);
  expect(html).toContain('<h2 id="x">');
  expect(html).toContain(`<div id="${move}-2">mine</div>`);
  expect(html).toContain('<p id="x-2">one</p>');
});

test('an author cannot show a block twice by writing what stands for it', () => {
  const [html = ''] = renderCourse([
    '<div class="0">a</div><div class="own-0">b</div>\n\n```moves\n1. e4 e5 2. Nf3\n```\n',
  ]);
  expect(html.match(/class="moves/g)).toHaveLength(1);
});

test.each([
  ...[
    '<select><option>',
    '<textarea>',
    '<title>',
    '<plaintext>',
    '<template>',
    '<xmp>',
    '<iframe>',
  ],
  ...['<noembed>', '<noframes>', '<noscript>', '<frameset>', '<svg>', '<math>', '<table><tr><td>'],
  ...['<p>', '<h2>', '<li>', '<button>', '<a href="x">', '<b>', '<ruby><rt>', '<details><summary>'],
])('%s that is left open takes neither blocks nor text along', (tag) => {
  const [html = ''] = renderCourse([
    `Before ${tag} it.\n\n\`\`\`moves\n1. e4 e5 2. Nf3\n\`\`\`\n\nAfter.\n`,
  ]);
  expect(readableText(html)).toMatch(/^Before\s+it\.\n1\. e4 e5 2\. Nf3\nAfter\.$/);
  // Read as the HTML standard says, it is what was written: nothing moves, nothing is made anew.
  const tags = (text: string) => text.match(/<\/?[a-z][\w-]*/g);
  expect(tags(serialize(parseFragment(html)))).toEqual(tags(html));
});

test('pictures and links that the reader has found in the course stay', () => {
  const picture =
    '<picture><source srcset="media/a.png 2x, media/b%20c.png"><img srcset="media/a.png 1.5x" src="media/a.png" alt="A"></picture>';
  expect(clean(picture)).toBe(picture);
  for (const list of [
    'media/a.png, //host/x.png 2x',
    'media/a.png 2x, https://host/x.png',
    'media/\\host',
  ]) {
    expect(clean(`<img srcset="${list}" alt="a">`), list).toBe('<img alt="a">');
  }
});

test('a link to a chapter that is written as HTML leads to its page', () => {
  const [html = ''] = renderCourse(['<b><a href="2.md#x">there</a></b>', 'Text.']);
  expect(html).toContain('<a href="2.html#x">there</a>');
});
