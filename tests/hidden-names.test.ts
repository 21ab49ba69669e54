/** Readers see titles, or where a position stands: never the names that authors write. */
import { readdirSync, readFileSync } from 'node:fs';
import { readdir, readFile } from 'node:fs/promises';
import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { beforeAll, expect, inject, test } from 'vitest';
import { loadCourse } from '../src/cli/load-course.ts';
import type { Course } from '../src/model/index.ts';
import { makeLetter } from '../src/publish/index.ts';
import { demoSite } from './browser/browser.ts';

/** What readers can see or hear of a page: its text, and the words in its attributes. */
function said(html: string): string {
  const spoken = [...html.matchAll(/ (?:title|aria-label|alt|content)="([^"]*)"/g)];
  const text = html
    .replace(/<(script|style)\b[\s\S]*?<\/\1>/g, ' ')
    // What authors copy into other sites holds addresses, which are made of names.
    .replace(/<pre class="snippet">[\s\S]*?<\/pre>/g, ' ')
    .replace(/<[^>]*>/g, ' ');
  return [text, ...spoken.map(([, words]) => words)].join('\n');
}

/** The names that no text of the author has as a word of its own. */
function namesToHide({ chapters, labels }: Course): string[] {
  const texts = chapters.map(({ file }) => readFileSync(path.join('demo-course', file), 'utf8'));
  const news = readdirSync('demo-course/news').map((file) =>
    readFileSync(path.join('demo-course/news', file), 'utf8'),
  );
  const prose = [...texts, ...news]
    .join('\n')
    .replace(/:(?:here|same|later)\[[^\]]*\]|\(pos:[^)]*\)|(?:from|at)="[^"]*"/g, ' ')
    .replace(/since [\w-]+|^(?:at|except): .*/gm, ' ');
  return Object.keys(labels).filter((name) => !has(prose, name));
}

function has(text: string, name: string): boolean {
  const written = name.replaceAll('.', '\\.');
  return new RegExp(`(?<![\\p{L}\\p{N}_./#-])${written}(?![\\p{L}\\p{N}_-])`, 'u').test(text);
}

let names: string[] = [];
let site = '';
const found = (text: string) => names.filter((name) => has(text, name));

beforeAll(async () => {
  const { course } = await loadCourse('demo-course');
  names = namesToHide(course);
  site = await demoSite();
});

test('there are names to look for, and they would be found', () => {
  expect(names.length).toBeGreaterThan(70);
  expect(found(said('<p>after <a href="#x">iqp-setup</a></p>'))).toEqual(['iqp-setup']);
  expect(found(said('<a href="a.html#iqp-setup" title="tabiya">here</a>'))).toEqual(['tabiya']);
});

test('no page of the site says one', async () => {
  const files = (await readdir(site, { recursive: true })).filter((file) => file.endsWith('.html'));
  expect(files.length).toBeGreaterThan(100);
  for (const file of files) {
    const html = await readFile(path.join(site, file), 'utf8');
    // For authors of other sites, who ask for a board by its name.
    const text = file === 'boards/list.html' ? html.replace(/<code>[^<]*<\/code>/g, '') : html;
    expect(found(said(text)), file).toEqual([]);
  }
});

test('no PGN file, no e-book and no letter says one', async () => {
  const files = await readdir(path.join(site, 'files'));
  const bytes = (end: string) =>
    readFile(path.join(site, 'files', files.find((file) => file.endsWith(end)) ?? end));
  expect(found(strFromU8(await bytes('.pgn')))).toEqual([]);
  for (const [file, content] of Object.entries(unzipSync(await bytes('.epub')))) {
    if (/\.x?html$/.test(file)) expect(found(said(strFromU8(content))), file).toEqual([]);
  }
  const { checked } = await loadCourse('demo-course');
  if (checked === undefined) throw new Error('the example course is sound');
  const cacheDir = path.join(inject('runFolder'), 'cache');
  for (const choice of [{ chapter: 'isolated-pawn' }, { positions: ['tabiya', 'iqp-setup'] }]) {
    const { html, text } = await makeLetter(checked, choice, {
      folder: 'demo-course',
      date: new Date('2026-03-01T12:00:00Z'),
      cacheDir,
    });
    expect(found(said(html))).toEqual([]);
    expect(found(text)).toEqual([]);
  }
});
