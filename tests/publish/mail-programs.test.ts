/**
 * What mail programs know of what letters use: the data of caniemail.com, by its package. Programs
 * that the data do not tell enough of are left out. Every gap stands in a table below with the
 * reason why a letter is whole without it; a new gap fails.
 */

import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { caniemail, rawData } from 'caniemail';
import { afterAll, beforeAll, expect, inject, test } from 'vitest';
import { loadCourse } from '../../src/cli/load-course.ts';
import { makeLetter } from '../../src/publish/index.ts';
import { writeMixedCourse } from './mixed-course.ts';

/** Not supported by some program. */
const missing: Readonly<Record<string, string>> = {
  '<body> element': 'its paper is also that of the outermost table',
  '<style> element': 'the looks are written into the elements; the sheet only narrows and darkens',
  '@media': 'as <style>: the column is fluid, and programs darken in their own way',
  'color-scheme meta tag': 'programs without it darken in their own way; boards keep their ground',
  'dir attribute': 'stands on <html> and on the outermost <div>; each is dropped by others',
  'lang attribute': 'as dir',
  'display:none': 'the preview line also has no height (gmail.mobile-webmail)',
  'max-height property': 'the preview line is also not displayed, and hidden by mso-hide',
  overflow: 'as max-height',
  'height attribute': 'the style has the size as well',
  'width attribute': 'the style has the size as well',
  'height property': 'becomes min-height: `auto` means the same there',
  'white-space': 'a long line of code makes the column wider',
  'word-break': 'a long word of code makes the column wider',
  'role attribute': 'only tells screen readers that layout tables are none',
};

/** Supported in part: what a letter uses is in the part that works, or there is a second way. */
const partial: Readonly<Record<string, string>> = {
  '<blockquote> element': 'nobody has tried it everywhere; without its rule it is a paragraph',
  '<body> element': 'becomes a <div>',
  '<hr> element': 'nobody has tried it everywhere',
  '<img> element': 'some ask the reader first: alternative texts say what is there',
  '<pre> element': 'nobody has tried it everywhere',
  '<style> element': 'stands in the head, before use, and is short',
  '<ul>, <ol> and <dl>': '`reversed` and `value` are not used by the letter itself',
  '@media': 'only max-width and prefers-color-scheme, not nested',
  'GIF image format': 'Outlook shows the first picture of those that move',
  'align attribute': 'only `center`, on a table cell',
  background: 'only colours',
  'background-color': 'the paper may be lost: ink on white then',
  border: 'a rule of 1 pixel; where it is lost a heading still divides',
  'border-collapse': 'only of the author’s tables: rules may have gaps',
  'cellpadding attribute': 'only 0',
  'cellspacing attribute': 'only 0',
  'color-scheme meta tag': 'as above',
  'dir attribute': 'as above',
  display: 'only `block` of a picture, which its centred paragraph centres too, and `none`',
  'display:none': 'as above',
  'font-size': 'only pixels',
  'font-weight': 'only `bold`',
  'height attribute': 'only pixels',
  'height property': 'only of pictures',
  'lang attribute': 'not on table cells',
  'line-height': 'pixels, made exact by mso-line-height-rule',
  margin: 'not negative; `auto` of a picture is also done by text-align',
  'max-width': 'on the table that holds all; a picture has its width as an attribute',
  overflow: 'as above',
  padding: 'of table cells; a list falls back to the indent of the program',
  'role attribute': 'as above',
  'white-space': '`pre-wrap` is in the part that works',
  'text-align': '`left`, `right` and `center`',
  'width attribute': 'only pixels of pictures',
  'word-break': 'where `break-word` is not known a long word of code makes the column wider',
  'width property': 'of pictures also as an attribute',
};

type EmailClientGlobs = Parameters<typeof caniemail>[0]['clients'][number];

/** `gmail.ios` and so on: every program that the data tell anything of. */
function clientNames(): EmailClientGlobs[] {
  const names = rawData.data.flatMap(({ stats }) =>
    Object.entries(stats).flatMap(([family, platforms]) =>
      Object.keys(platforms).map((platform) => `${family}.${platform}`),
    ),
  );
  return [...new Set(names)].sort() as EmailClientGlobs[];
}

const work = mkdtempSync(path.join(tmpdir(), 'linewright-mail-'));
afterAll(() => rmSync(work, { recursive: true, force: true }));

let html = '';
beforeAll(async () => {
  writeMixedCourse(work);
  const { checked } = await loadCourse(work);
  if (!checked) throw new Error('the course has errors');
  const options = { folder: work, date: new Date(0), site: 'https://club.example' };
  const cacheDir = path.join(inject('runFolder'), 'cache');
  html = (await makeLetter(checked, { chapter: 'erste' }, { ...options, cacheDir })).html;
});

test('every gap is known, and there are no others', () => {
  const found = { errors: new Set<string>(), warnings: new Set<string>() };
  const untold: string[] = [];
  for (const client of clientNames()) {
    try {
      const { issues } = caniemail({ clients: [client], html });
      for (const kind of ['errors', 'warnings'] as const) {
        for (const issue of [...issues[kind].values()].flat()) found[kind].add(issue.title);
      }
    } catch (error) {
      if (!(error instanceof RangeError)) throw error;
      untold.push(client);
    }
  }
  expect([...found.errors].sort()).toEqual(Object.keys(missing).sort());
  expect([...found.warnings].sort()).toEqual(Object.keys(partial).sort());
  // Gmail, Outlook, Apple Mail, Yahoo, Samsung, Thunderbird and others are told of.
  expect(untold.length).toBeLessThan(15);
  expect(untold.filter((client) => /gmail|outlook|apple|yahoo|samsung/.test(client))).toEqual([]);
});
