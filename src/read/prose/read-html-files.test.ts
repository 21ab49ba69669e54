import { expect, test } from 'vitest';
import { readChapter } from '../read-chapter.ts';
import { readOne } from '../testing/read-one.ts';

const media = ['media/a.png', 'media/b c.png', 'media/sheet.pdf', 'media/talk.mp4'];

function read(text: string) {
  const draft = readChapter(
    { path: 'chapters/1.md', text },
    {
      media: new Set(media),
      chapters: new Set(['chapters/1.md', 'chapters/2.md']),
      frontMatter: 'optional',
    },
  );
  return {
    media: draft.media,
    problems: draft.problems.map(
      ({ place, message }) => `${text.slice(place.start.offset, place.end.offset)}: ${message}`,
    ),
    html: JSON.stringify(draft.body).match(/"type":"html","value":"((?:[^"\\]|\\.)*)"/g) ?? [],
  };
}

// HTML, 4.5.1 and 4.8: the elements and attributes that name files.
test.each([
  ['<img src="media/a.png" alt="A">', ['media/a.png']],
  ['<IMG SRC="../media/a.png">', ['media/a.png']],
  ["A word <img src='media/b c.png'> and more.", ['media/b c.png']],
  ['<img src="media/b%20c.png?x#y">', ['media/b c.png']],
  [
    '<picture><source srcset="media/a.png 2x, ../media/b%20c.png"><img src="media/a.png"></picture>',
    ['media/a.png', 'media/b c.png'],
  ],
  ['<video src="media/talk.mp4" poster="media/a.png"></video>', ['media/a.png', 'media/talk.mp4']],
  ['<a href="media/sheet.pdf">sheet</a>', ['media/sheet.pdf']],
  ['<table><tr><td><img src="media/a.png"></td></tr></table>', ['media/a.png']],
  ['<td><img src="media/a.png"></td>', ['media/a.png']],
  ['> <figure>\n>   <img\n>     src="media/a.png">\n> </figure>', ['media/a.png']],
  ['<template><img src="media/a.png"></template>', ['media/a.png']],
])('%s publishes what it names', (text, names) => {
  const { media: used, problems } = read(text);
  expect(problems).toEqual([]);
  expect(used).toEqual(names);
});

test.each([
  ['<img src="media/none.png">', ['src="media/none.png": There is no picture media/none.png in']],
  [
    'A <img src="media/x.png"> B <img alt="src=" src="media/x.png">',
    ['src="media/x.png": ', 'src="media/x.png": '],
  ],
  [
    '<img srcset="media/a.png, media/y.png 2x">',
    ['srcset="media/a.png, media/y.png 2x": There is no picture media/y.png'],
  ],
  [
    '<video poster="media/y.png"></video>',
    ['poster="media/y.png": There is no picture media/y.png'],
  ],
  [
    '<img src="https://example.org/x.png">',
    ['src="https://example.org/x.png": The picture https://example.org/x.png would be fetched'],
  ],
  [
    '<img src="//example.org/x.png">',
    ['src="//example.org/x.png": The picture //example.org/x.png would be fetched'],
  ],
  [
    '<img src="../../secret.png">',
    ['src="../../secret.png": The picture ../../secret.png lies outside'],
  ],
  [
    '<img src="data:image/png;base64,AA==">',
    ['src="data:image/png;base64,AA==": This picture stands in its address'],
  ],
  [
    '<a href="media/none.pdf">x</a>',
    ['href="media/none.pdf": This link leads to media/none.pdf, and nothing'],
  ],
  ['<a href="3.md">x</a>', ['href="3.md": This link leads to 3.md, and nothing']],
  [
    '<a href="pos:main">x</a>',
    ['href="pos:main": A link to a position cannot be written as HTML.'],
  ],
  [
    '> <figure>\n>   <img\n>     src="media/y.png">\n> </figure>',
    ['src="media/y.png": There is no picture'],
  ],
])('%s is a finding at the attribute', (text, found) => {
  const { problems } = read(text);
  expect(problems).toEqual(found.map((start) => expect.stringContaining(start)));
});

test('what names no file of the course stays as it is written', () => {
  for (const text of [
    '<a href="https://example.org/">x</a>',
    '<a href="#b1">x</a>',
    '<a href="index.html">x</a>',
    '<a href="mailto:a@example.org">x</a>',
    '<b title="src=">x</b>',
    '<!-- <img src="x.png"> -->',
    '<img alt="no src">',
  ]) {
    const { problems, media: used } = read(text);
    expect([problems, used]).toEqual([[], []]);
  }
  expect(readOne('<b>a</b>').media).toEqual([]);
});

test('addresses become paths from the course folder, and nothing else of the HTML changes', () => {
  expect(read('<p class="x"><img  src=../media/b%20c.png  alt="A &amp; B"></p>').html).toEqual([
    '"type":"html","value":"<p class=\\"x\\"><img  src=\\"media/b%20c.png\\"  alt=\\"A &amp; B\\"></p>"',
  ]);
  expect(read('<div><a href="2.md#x">x</a></div>').html).toEqual([
    '"type":"html","value":"<div><a href=\\"chapters/2.md#x\\">x</a></div>"',
  ]);
});
