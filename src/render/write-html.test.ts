import type { Element, ElementContent, Properties } from 'hast';
import { toHtml } from 'hast-util-to-html';
import { toXast } from 'hast-util-to-xast';
import { expect, test } from 'vitest';
import { element, text } from './hast.ts';
import { writeHtml, writeInPieces, writeXhtml } from './write-html.ts';
import { writeXml } from './write-xml.ts';

const words = [
  '',
  'e4',
  `a "b" 'c' \`d\``,
  'R&D <i> &amp; ]]>',
  'a\u001b',
  '\n',
  'ü ♞ 𝄞',
  '\ud800',
];
const values: Properties = {
  id: 'a"b',
  className: ['move', 'lead'],
  dataAt: 'at-8&8',
  dataFootnoteRef: true,
  ariaDescribedBy: ['one', 'two'],
  href: '#note-1',
  alt: '',
  width: 320,
  start: Number.NaN,
  open: false,
  reversed: true,
  checked: '',
  disabled: 'disabled',
  download: '',
  srcSet: 'a.png 1x, b.png 2x',
  accept: ['a', 'b'],
  coords: [1, 2, 3],
  dataNothing: null,
  title: undefined,
  lang: 'de',
  'xml:lang': 'de',
  'epub:type': 'footnote',
};

/** Elements with each attribute, each text, and each kind of element within another. */
const samples: ElementContent[] = [
  ...Object.entries(values).flatMap(([name, value]) =>
    ['p', 'img'].map((tagName) => element(tagName, { [name]: value }, [])),
  ),
  ...words.flatMap((word) => [text(word), element('p', { title: word }, [word])]),
  element('ul', values, [element('li', {}, ['a', element('br', {}, []), 'b']), text('\n')]),
  element('span', {}, [element('p', {}, [])]),
];

test('writes the HTML that hast-util-to-html writes', () => {
  for (const sample of [...samples, { type: 'raw', value: '<svg/>' } as const]) {
    const expected = toHtml(sample, { allowDangerousHtml: true });
    expect(writeHtml([sample])).toBe(expected);
    expect(writeInPieces([sample]).length % 2).toBe(1);
  }
  expect(writeHtml(samples)).toBe(toHtml({ type: 'root', children: samples }));
});

test('writes the XML that hast-util-to-xast and xast-util-to-xml write', () => {
  const page = (children: ElementContent[]): Element =>
    element('html', { xmlns: 'http://www.w3.org/1999/xhtml' }, children);
  for (const sample of samples) {
    const expected = writeXml(toXast(page([sample])));
    expect(`<?xml version="1.0" encoding="utf-8"?>${writeXhtml([page([sample])])}\n`).toBe(
      expected,
    );
  }
});

test('cuts at ids, and leaves their text as HTML has it', () => {
  const tree = [element('p', { id: 'a"b', lang: 'de' }, [element('a', { id: 'c' }, ['d'])])];
  expect(writeInPieces(tree)).toEqual(['<p', 'a&#x22;b', ' lang="de"><a', 'c', '>d</a></p>']);
  const [start, id, rest] = writeInPieces([element('i', { id: 'x' }, [])]);
  expect(`${start} id="${id}"${rest}`).toBe(toHtml(element('i', { id: 'x' }, [])));
});
