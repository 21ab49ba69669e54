/** E-books, read with other people's tools: two EPUB checkers, a ZIP reader, an XML parser. */
import { execFileSync } from 'node:child_process';
import { existsSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { EpubCheck } from '@likecoin/epubcheck-ts';
import { strFromU8, unzipSync } from 'fflate';
import { SaxesParser } from 'saxes';
import { afterAll, beforeAll, describe, expect, inject, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import { makeBook } from '../../src/publish/book/index.ts';
import { multiple } from '../setup/runs.ts';
import { writeMixedCourse } from './mixed-course.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-book-'));
const mixed = path.join(work, 'mixed');
afterAll(() => rmSync(work, { recursive: true, force: true }));

const modified = new Date('2026-03-01T12:00:00.500Z');

async function bookOf(folder: string, site?: string): Promise<Uint8Array> {
  const { checked, diagnostics } = await loadCourse(folder);
  if (checked === undefined) throw new Error(diagnostics.map(({ message }) => message).join('\n'));
  const cacheDir = path.join(inject('runFolder'), 'cache');
  return makeBook(checked, { folder, modified, site, cacheDir });
}

const books = new Map<string, Uint8Array>();
const filesOf = (name: string) => unzipSync(books.get(name) ?? new Uint8Array());
const textOf = (name: string, file: string) =>
  strFromU8(filesOf(name)[`EPUB/${file}`] ?? new Uint8Array());

beforeAll(async () => {
  writeMixedCourse(mixed);
  books.set('mixed', await bookOf(mixed));
  books.set('demo', await bookOf('demo-course'));
});

describe.each(['mixed', 'demo'])('%s', (name) => {
  // EPUB 3.3: a second implementation of EPUBCheck.
  test('epubcheck-ts has nothing to say', async () => {
    const { messages, valid } = await EpubCheck.validate(books.get(name) ?? new Uint8Array());
    expect(
      messages.map(({ id, message, location }) => `${id} ${location?.path} ${message}`),
    ).toEqual([]);
    expect(valid).toBe(true);
  });

  // The EPUBCheck of the W3C as Debian has it, 4.2.6: EPUB 3.2. By day it reads the course that has a bit of all.
  const jar = '/usr/share/java/epubcheck.jar';
  test.skipIf(!existsSync(jar) || (name !== 'mixed' && multiple <= 1))(
    'EPUBCheck has nothing to say',
    () => {
      const file = path.join(work, `${name}.epub`);
      writeFileSync(file, books.get(name) ?? '');
      // Two thirds of the time of so short a program would go into compiling it well.
      const quick = ['-XX:TieredStopAtLevel=1', '-XX:+UseSerialGC', '-Xshare:auto'];
      const said = execFileSync('java', [...quick, '-jar', jar, '--failonwarnings', file], {
        encoding: 'utf8',
        stdio: ['ignore', 'pipe', 'pipe'],
      });
      expect(said).toContain('No errors or warnings detected');
      // Java starts slowly where it shares its core.
    },
    240_000,
  );

  // EPUB 3.3, 4.2.3: the file's kind can be read at a fixed place.
  test('the kind of file stands first, stored', () => {
    const start = strFromU8((books.get(name) ?? new Uint8Array()).slice(30, 58));
    expect(start).toBe('mimetypeapplication/epub+zip');
  });

  test('every picture has an alternative text', () => {
    for (const [file, content] of Object.entries(filesOf(name))) {
      if (!file.endsWith('.xhtml')) continue;
      const parser = new SaxesParser();
      parser.on('opentag', (tag) => {
        if (tag.name === 'img') expect(tag.attributes.alt, file).not.toBe('');
      });
      parser.write(strFromU8(content)).close();
    }
  });
});

test('the same course gives the same bytes', async () => {
  expect(Buffer.compare(await bookOf(mixed), books.get('mixed') ?? new Uint8Array())).toBe(0);
});

test('chapters are read in their order, and the metadata say what the book is', () => {
  const text = textOf('demo', 'package.opf');
  const idOf = (file: string) =>
    new RegExp(`id="([^"]+)" href="text/${file}\\.xhtml"`).exec(text)?.[1];
  const spine = [...text.matchAll(/<itemref idref="([^"]+)"/g)].map(([, id]) => id);
  // Pages of the author's stand behind them, where their front matter says `book: yes`.
  const documents = ['isolated-pawn', 'other-answers', 'move-orders', 'about'].map(idOf);
  expect(spine.slice(-4)).toEqual(documents);
  expect(text).not.toContain('imprint');
  const about = textOf('demo', 'text/about.xhtml');
  expect(about).toContain('<section epub:type="backmatter"><header><h1>About the club</h1>');
  expect(text).toContain('<meta property="dcterms:modified">2026-03-01T12:00:00Z</meta>');
  expect(text).toContain('<meta property="schema:accessModeSufficient">textual</meta>');
  expect(text).toContain('<dc:creator id="author">Marit Oldenbourg</dc:creator>');
});

test('links lead to chapters, headings and moves, or are text', () => {
  const page = textOf('mixed', 'text/erste.xhtml');
  expect(page).toContain('<a href="02.xhtml#der-zug">dem zweiten Kapitel</a>');
  expect(page).toContain('<a href="02.xhtml">nichts</a>');
  expect(page).toContain('<a class="position-link" href="#stamm">einem Verweis</a>');
  expect(page).toContain('<span>alle Stellungen</span>');
  expect(page).toContain('<span>einem Blatt</span>');
  expect(page).toContain('href="https://example.org/a?b&#x26;c"');
});

test('nothing is folded, and lists of positions are words', () => {
  const page = textOf('mixed', 'text/02.xhtml');
  expect(page).not.toMatch(/<details|<summary/);
  const [places = ''] = /<p class="places">.*?<\/p>/.exec(page) ?? [];
  expect(
    places.match(/<a class="position-link" href="(?:01|erste|02)?[^"]*#/g)?.length,
  ).toBeGreaterThan(1);
  expect(places.replaceAll(/<[^>]*>/g, '')).toMatch(/ 1\.\.\.e5 bis 2\.Sf3, /);
});

test('an exercise and its answer lead to each other, and the contents name the answers', () => {
  const page = textOf('demo', 'text/isolated-pawn.xhtml');
  const exercises = [...page.matchAll(/<section class="exercise"[^>]* id="([^"]+)"/g)];
  expect(exercises).toHaveLength(4);
  for (const [index, [, id = '']] of exercises.entries()) {
    expect(page).toContain(`<p class="to-answer"><a href="#answer-to-${id}">To the answer</a></p>`);
    expect(page).toContain(
      `<p class="exercise-number" id="answer-to-${id}"><a href="#${id}">Exercise ${index + 1}</a>`,
    );
  }
  expect(page).toContain(
    '<section class="answers" epub:type="answers"><h2 class="answers-title" id="answers">',
  );
  const contents = textOf('demo', 'front/contents.xhtml');
  expect(contents).toContain('<a href="../text/isolated-pawn.xhtml#answers">Answers</a>');
});

// EPUB Structural Semantics Vocabulary 1.1; DPUB-ARIA 1.1.
test('notes have their roles', () => {
  const page = textOf('mixed', 'text/erste.xhtml');
  expect(page).toMatch(
    /<a href="#note-fn-1" id="note-fnref-1" epub:type="noteref" role="doc-noteref">1<\/a>/,
  );
  expect(page).toContain('<section class="footnotes" epub:type="footnotes">');
  expect(page).toMatch(
    /<aside id="note-fn-1" epub:type="footnote" role="doc-footnote">\s*<p>1\. Die Note\. <a [^>]*href="#note-fnref-1"[^>]* epub:type="backlink" role="doc-backlink">/,
  );
});

// EPUB 3.3, 5.5.3.2; EPUB Accessibility 1.1, conformance reporting.
test('the day of the edition, and who vouches for it', async () => {
  const text = textOf('mixed', 'package.opf');
  expect(text).toContain('<dc:date>2026-03-01</dc:date>');
  // Nobody has looked at it.
  expect(text).not.toMatch(/conformsTo|certifiedBy/);
  expect(textOf('demo', 'package.opf')).toContain(
    '<meta property="dcterms:conformsTo" id="accessibility">EPUB Accessibility 1.1 - WCAG 2.2 Level AA</meta>' +
      '<meta property="a11y:certifiedBy" refines="#accessibility">Marit Oldenbourg</meta>',
  );
});

test('with a site what is not in the book is found there', async () => {
  const files = unzipSync(await bookOf(mixed, 'https://club.example/spanisch'));
  const page = strFromU8(files['EPUB/text/erste.xhtml'] ?? new Uint8Array());
  expect(page).toContain('href="https://club.example/spanisch/positions.html"');
  expect(page).toContain('href="https://club.example/spanisch/media/blatt.pdf"');
});

test('pictures that readers cannot show become their words', () => {
  const page = textOf('mixed', 'text/erste.xhtml');
  expect(page).toContain('Ein neues Format');
  expect(Object.keys(filesOf('mixed')).filter((file) => file.includes('/media/'))).toEqual([
    'EPUB/media/picture-1.gif',
    'EPUB/media/picture-2.svg',
  ]);
});

test('moves are text in the language, the question comes before its answer', () => {
  const page = textOf('mixed', 'text/erste.xhtml').replaceAll(/<[^>]*>/g, '');
  expect(page).toContain('3.\u00a0Lb5 a6 4.\u00a0La4');
  expect(page).toContain('2.\u00a0Sf3\u00a0+/=');
  expect(page).toContain('Nach 4.La4. Schwarz am Zug');
  const [question, answers] = [page.indexOf('Was spielt Schwarz?'), page.indexOf('1...\u00a0f6')];
  expect(question).toBeGreaterThan(0);
  expect(answers).toBeGreaterThan(page.indexOf('Lösungen'));
  expect(answers).toBeGreaterThan(question);
});
