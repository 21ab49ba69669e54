import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { strToU8, zipSync } from 'fflate';
import { afterAll, describe, expect, test } from 'vitest';
import { findMediaFault } from './media-fault.ts';
import { mediaKinds } from './media-kinds.ts';
import { activeSvgs, plainSvgs } from './testing/svgs.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-media-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

async function faultOf(name: string, content: string | Uint8Array): Promise<string | undefined> {
  const file = path.join('media', name);
  mkdirSync(path.dirname(path.join(work, file)), { recursive: true });
  writeFileSync(path.join(work, file), content);
  const fault = await findMediaFault(work, file);
  return fault && `${fault.message} ${fault.hint}`;
}

const latin1 = (text: string) => Buffer.from(text, 'latin1');
const zip = (type: string) =>
  zipSync({ mimetype: [strToU8(type), { level: 0 }], 'content.xml': strToU8('<x/>') });
const office = (type: string) =>
  zipSync({
    '[Content_Types].xml': strToU8(
      `<Types xmlns="http://schemas.openxmlformats.org/package/2006/content-types"><Override PartName="/x" ContentType="application/vnd.openxmlformats-officedocument.${type}.main+xml"/></Types>`,
    ),
  });
const box = (brand: string) => latin1(`\0\0\0\x18ftyp${brand}\0\0\0\0${brand}isom`);
const ogg = (inside: string) =>
  latin1(`OggS\0\x02${'\0'.repeat(20)}\x01\x13${inside}${'\0'.repeat(40)}`);
const webm = latin1(
  '\x1aE\xdf\xa3\x9fB\x86\x81\x01B\xf7\x81\x01B\xf2\x81\x04B\xf3\x81\x08B\x82\x84webmB\x87\x81\x04',
);
const png = Buffer.from(
  'iVBORw0KGgoAAAANSUhEUgAAAAEAAAABCAYAAAAfFcSJAAAADUlEQVR42mNk+M9QDwADhgGAWjR9awAAAABJRU5ErkJggg==',
  'base64',
);

/**
 * How a file of each kind begins: by the MIME Sniffing Standard (section 6: pictures, sound, films,
 * archives), EPUB 3.3 and OpenDocument 1.3 (the entry `mimetype`), Office Open XML (content types), OpenType 1.9
 * ("Table directory"), WOFF 1.0 and 2.0 (their headers).
 */
const sound: Readonly<Record<string, string | Uint8Array>> = {
  'a.avif': box('avif'),
  'a.gif': 'GIF89a\x01\0\x01\0',
  'a.jpeg': latin1('\xff\xd8\xff\xe0\0\x10JFIF\0'),
  'a.jpg': latin1('\xff\xd8\xff\xdb\0\x10'),
  'a.png': png,
  'a.svg': plainSvgs.nothing ?? '',
  'a.webp': latin1('RIFF\x1a\0\0\0WEBPVP8L'),
  'a.csv': 'Müller;1-0\n',
  'a.docx': office('wordprocessingml.document'),
  'a.epub': zip('application/epub+zip'),
  'a.odp': zip('application/vnd.oasis.opendocument.presentation'),
  'a.ods': zip('application/vnd.oasis.opendocument.spreadsheet'),
  'a.odt': zip('application/vnd.oasis.opendocument.text'),
  'a.pdf': '%PDF-1.7\n',
  'a.pgn': latin1('[White "M\xfcller"]\r\n\r\n1. e4 *\r\n'),
  'a.pptx': office('presentationml.presentation'),
  'a.txt': '\uFEFFA text.',
  'a.xlsx': office('spreadsheetml.sheet'),
  'a.zip': zipSync({ 'index.html': strToU8('<p>') }),
  'a.flac': latin1('fLaC\0\0\0"'),
  'a.m4a': box('M4A '),
  'a.mp3': latin1('ID3\x03\0\0\0\0\0\0\xff\xfb\x90\0'),
  'a.mp4': box('isom'),
  'a.ogg': ogg('\x01vorbis'),
  'a.opus': ogg('OpusHead'),
  'a.wav': latin1('RIFF\x24\0\0\0WAVEfmt '),
  'a.webm': webm,
  'a.otf': latin1('OTTO\0\x0b\0\x80'),
  'a.ttf': latin1('\0\x01\0\0\0\x0f\0\x80'),
  'a.woff': latin1('wOFF\0\x01\0\0'),
  'a.woff2': latin1('wOF2\0\x01\0\0'),
};

describe('a file of a kind that is handed out', () => {
  test('is listed here', () => {
    expect(Object.keys(sound)).toEqual(Object.keys(mediaKinds).map((ending) => `a${ending}`));
  });
  test.each(Object.entries(sound))('is published: %s', async (name, content) => {
    expect(await faultOf(name, content)).toBeUndefined();
    expect(await faultOf(`deep/${name.toUpperCase()}`, content)).toBeUndefined();
  });
  test.each(Object.keys(sound))('is none if it is a page: %s', async (name) => {
    for (const page of [
      '<!doctype html><script>1</script>',
      ' \n<script>1</script>',
      '<?php 1 ?>',
    ]) {
      expect(await faultOf(name, page)).toMatch(/^media\/a\.\w+ is not published: it /);
    }
  });
  test.each(Object.keys(sound).filter((name) => !/csv|pgn|txt/.test(name)))(
    'is none if it is empty, or words: %s',
    async (name) => {
      expect(await faultOf(name, '')).toContain('is not published');
      expect(await faultOf(name, 'alert(1)')).toContain('is not published');
    },
  );
});

test('a file of another kind than its name says is told which', async () => {
  expect(await faultOf('photo.png', sound['a.jpg'] ?? '')).toBe(
    'media/photo.png is not published: it is no .png file but a .jpg file. Rename it to photo.jpg.',
  );
  expect(await faultOf('sheet.pdf', latin1('CWS\x0a\0\0\0\0'))).toBe(
    'media/sheet.pdf is not published: it is no .pdf file but a .swf file. Save it as a .pdf file.',
  );
  expect(await faultOf('games.pgn', 'a\0b')).toContain('it is no text');
});

// MIME Sniffing Standard, section 7.1: what a browser takes for HTML, XML where no type is given.
const patterns = [
  ...['<!DOCTYPE HTML', '<HTML', '<HEAD', '<SCRIPT', '<IFRAME', '<H1', '<DIV', '<FONT', '<TABLE'],
  ...['<A', '<STYLE', '<TITLE', '<B', '<BODY', '<BR', '<P', '<!--', '<?xml'],
];
test.each(patterns)('a text that begins with %s could be taken for a page', async (pattern) => {
  for (const name of ['a.txt', 'a.pgn', 'a.csv']) {
    for (const before of ['', ' ', '\t\r\n\f', '\uFEFF']) {
      for (const text of [pattern, pattern.toLowerCase()]) {
        expect(await faultOf(name, `${before}${text}>`)).toContain('begins with `<`');
      }
    }
  }
});

describe('a name that a browser or a server obeys', () => {
  test.each([
    ...[
      'x.htm',
      'x.html',
      'x.xhtml',
      'x.xht',
      'x.xml',
      'x.xsl',
      'x.svgz',
      'x.js',
      'x.mjs',
      'x.wasm',
    ],
    ...[
      'x.css',
      'x.swf',
      'x.php',
      'x.phtml',
      'x.shtml',
      'x.cgi',
      'x.pl',
      'x.py',
      'x.asp',
      'x.aspx',
    ],
    ...['x.jsp', 'x.hta', 'x.htc', 'x.exe', 'x.bat', 'x.jar', 'x.mht', 'x.webmanifest', 'x.map'],
    ...[
      'x.json',
      'x.md',
      'web.config',
      '_headers',
      '_redirects',
      'CNAME',
      'x.',
      'x.html.',
      'x.png.',
    ],
  ])('is not published: %s', async (name) => {
    expect(await faultOf(name, '')).toContain('is not published');
  });

  test.each([
    ...[
      '.htaccess',
      '.htpasswd',
      '.user.ini',
      '.png',
      '.git/a.png',
      'a/.b/c.png',
      '.well-known/a.txt',
    ],
    ...[
      'a.php.png',
      'a.shtml.png',
      'a.html.png',
      'a.PHP5.png',
      'a.js.png',
      'a.asp;.png',
      'a.php .png',
    ],
  ])('is not published, whatever it ends with: %s', async (name) => {
    expect(await faultOf(name, png)).toMatch(/dot|would take it for/);
  });

  test.each(['1.e4 e5.png', 'v1.2.png', 'a.b.png', 'Plan (2).png', 'Übersicht.png', 'php.png'])(
    'is another: %s',
    async (name) => {
      expect(await faultOf(name, png)).toBeUndefined();
    },
  );
});

test('an SVG is read as UTF-8, and told by its parts', async () => {
  for (const text of Object.values(plainSvgs)) expect(await faultOf('a.svg', text)).toBeUndefined();
  for (const text of Object.values(activeSvgs)) {
    expect(await faultOf('a.svg', text)).toContain('a.svg is not published: it has ');
  }
  expect(
    await faultOf('a.svg', latin1(`<?xml version="1.0" encoding="iso-8859-1"?><svg>\xfc</svg>`)),
  ).toContain('it is not UTF-8');
  const wide = Buffer.from(`\uFEFF${activeSvgs.script}`, 'utf16le');
  expect(await faultOf('a.svg', wide)).toContain('it is not UTF-8');
  expect(await faultOf('a.svg', wide.subarray(2))).toContain('it has ');
});
