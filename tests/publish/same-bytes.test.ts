/** What is sent out twice is the same bytes: whenever it is made, wherever the course lies, however old its files are. */
import {
  cpSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  utimesSync,
  writeFileSync,
} from 'node:fs';
import path from 'node:path';
import { strFromU8, unzipSync } from 'fflate';
import { afterEach, beforeAll, beforeEach, describe, expect, inject, test, vi } from 'vitest';
import { exportCourse } from '../../src/cli/export.ts';
import { letter } from '../../src/cli/letter.ts';
import { loadCourse } from '../../src/cli/load-course.ts';
import { courseDate } from '../../src/pipeline/build/index.ts';
import { toldDate } from '../../src/pipeline/told-date.ts';
import { makeMessage } from '../../src/publish/letter/message.ts';
import { writeMixedCourse } from './mixed-course.ts';

let work: string;
let first: string;
let second: string;

beforeAll(() => {
  work = mkdtempSync(path.join(inject('runFolder'), 'same-'));
  first = path.join(work, 'first');
  second = path.join(work, 'elsewhere', 'second');
  writeMixedCourse(first);
  cpSync(first, second, { recursive: true });
  for (const [index, file] of readdirSync(second, {
    recursive: true,
    encoding: 'utf8',
  }).entries()) {
    utimesSync(path.join(second, file), 1_500_000_000 + index, 1_500_000_000 + index);
  }
});
beforeEach(() => {
  vi.stubEnv('SOURCE_DATE_EPOCH', undefined);
  vi.stubEnv('LINEWRIGHT_CACHE', path.join(inject('runFolder'), 'cache'));
  vi.spyOn(process.stdout, 'write').mockReturnValue(true);
  vi.spyOn(process.stderr, 'write').mockReturnValue(true);
});
afterEach(() => {
  vi.useRealTimers();
  vi.unstubAllEnvs();
  vi.restoreAllMocks();
});

const clock = (now: string) => vi.useFakeTimers({ toFake: ['Date'], now: new Date(now) });

async function letterOf(course: string, options: Parameters<typeof letter>[2] = {}) {
  const out = mkdtempSync(path.join(work, 'letter-'));
  expect(await letter('1', course, { ...options, out })).toBe(0);
  return readFileSync(path.join(out, 'letter.eml'), 'latin1');
}

async function bookOf(course: string, options: Partial<Parameters<typeof exportCourse>[1]> = {}) {
  const out = path.join(mkdtempSync(path.join(work, 'book-')), 'book.epub');
  expect(await exportCourse(course, { ...options, out })).toBe(0);
  return readFileSync(out);
}

describe('a letter', () => {
  test('of one day, made at two times in two places', async () => {
    // By the clock of the author: the same day wherever the tests run.
    clock('2026-03-01T09:00:00');
    const morning = await letterOf(first);
    clock('2026-03-01T21:30:00');
    expect(await letterOf(second)).toBe(morning);
    expect(morning).toMatch(/^Date: Sun, 01 Mar 2026 00:00:00 \+0000\r?$/m);
  });

  test('with a date, made on two days', async () => {
    clock('2026-03-01T09:00:00');
    const early = await letterOf(first, { date: '2026-02-28' });
    clock('2026-04-01T09:00:00');
    expect(await letterOf(second, { date: '2026-02-28' })).toBe(early);
    expect(early).toContain('Date: Sat, 28 Feb 2026 00:00:00 +0000');
    expect(await letterOf(second)).not.toBe(early);
  });

  test('the date that is given comes before the one of the environment', async () => {
    vi.stubEnv('SOURCE_DATE_EPOCH', '1772366400');
    expect(await letterOf(first)).toContain('Date: Sun, 01 Mar 2026 12:00:00 +0000');
    expect(await letterOf(first, { date: '2026-02-28' })).toContain('Date: Sat, 28 Feb 2026');
  });

  test('that says or shows something else has another Message-ID', async () => {
    const parts = {
      ...{ subject: 'A', from: 'a@club.example', to: 'b@club.example', text: 'x', html: 'x' },
      date: new Date(0),
      pictures: new Map([['images/a.png', { type: 'image/png', bytes: Buffer.from('1') }]]),
    };
    const other = (bytes: string) =>
      new Map([['images/a.png', { type: 'image/png', bytes: Buffer.from(bytes) }]]);
    const ids = await Promise.all(
      [
        parts,
        { ...parts, subject: 'B' },
        { ...parts, from: 'c@club.example' },
        { ...parts, to: 'c@club.example' },
        { ...parts, text: 'y' },
        { ...parts, html: 'y' },
        { ...parts, date: new Date(86_400_000) },
        { ...parts, pictures: other('2') },
        { ...parts, text: 'xx', html: '' },
      ].map(async (each) => /Message-ID: (\S+)/.exec((await makeMessage(each)).toString())?.[1]),
    );
    expect(ids).not.toContain(undefined);
    expect(new Set(ids).size).toBe(ids.length);
    expect(await makeMessage(parts)).toEqual(await makeMessage(parts));
  });
});

describe('a book', () => {
  test('of two checkouts, made on two days', async () => {
    clock('2026-03-01T09:00:00');
    const book = await bookOf(first);
    clock('2026-04-01T09:00:00');
    expect((await bookOf(second)).equals(book)).toBe(true);
    const text = strFromU8(unzipSync(book)['EPUB/package.opf'] ?? new Uint8Array());
    expect(text).toContain('<meta property="dcterms:modified">1980-01-01T00:00:00Z</meta>');
    expect(text).not.toContain('dc:date');
  });

  test('has the date that is given, else of the environment, else of the latest news', async () => {
    const { course } = await loadCourse(first);
    expect(courseDate(course)).toBeUndefined();
    const news = path.join(work, 'news');
    cpSync(first, news, { recursive: true });
    mkdirSync(path.join(news, 'news'));
    for (const date of ['2025-12-31', '2026-01-02', '2026-01-01']) {
      writeFileSync(
        path.join(news, `news/${date}.md`),
        `---\ntitle: New\ndate: ${date}\n---\n\nText.\n`,
      );
    }
    const edition = (await loadCourse(news)).course;
    expect(courseDate(edition)?.toISOString()).toBe('2026-01-02T00:00:00.000Z');
    vi.stubEnv('SOURCE_DATE_EPOCH', '1772366400');
    expect(courseDate(edition)?.toISOString()).toBe('2026-03-01T12:00:00.000Z');
    expect(courseDate(edition, '2026-02-28')?.toISOString()).toBe('2026-02-28T00:00:00.000Z');
  });

  test('a date for a file that has none is told', async () => {
    await expect(exportCourse(first, { format: 'pgn', date: '2026-02-28' })).rejects.toThrow(
      '`--date` is for e-books',
    );
  });
});

test('a date of the environment that is none is told, as the specification asks', () => {
  // reproducible-builds.org/specs/source-date-epoch: a malformed value should be an error.
  for (const wrong of ['yesterday', '1.5', '-1', '1772366400 ', '9'.repeat(16)]) {
    vi.stubEnv('SOURCE_DATE_EPOCH', wrong);
    expect(() => toldDate()).toThrow(/SOURCE_DATE_EPOCH/);
  }
  vi.stubEnv('SOURCE_DATE_EPOCH', '');
  expect(toldDate()).toBeUndefined();
  vi.stubEnv('SOURCE_DATE_EPOCH', '0');
  expect(toldDate()).toEqual(new Date(0));
});
