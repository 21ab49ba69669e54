/** What stands at the root of a shelf beside its pages. */
import { expect, test } from 'vitest';
import type { BuiltCourse, Shelf } from '../../contract/index.ts';
import { type ColourName, defaultColour, type Mode } from '../../look/index.ts';
import { clothOf, clothSheet } from './cloth-sheet.ts';
import { booksOf, latestNews, tableOf } from './shelf-books.ts';
import { shelfFiles } from './shelf-files.ts';
import { shelfFrame } from './shelf-frame.ts';

const green = (name: ColourName, mode: Mode) =>
  name === 'cover' && mode === 'light' ? '#1f4a2c' : defaultColour(name, mode);

function course(id: string, more: Partial<BuiltCourse> = {}): BuiltCourse {
  return {
    ...{ id, course: `${id}-course`, title: `The ${id}: with a subtitle`, language: 'en' },
    ...{ side: 'black', chapters: 3, minutes: 30, moves: 12, cloth: { light: {}, dark: {} } },
    news: [],
    files: ['index.html', 'practice.html', 'course-table.0a1b2c.js', 'course-table.js'],
    ...more,
  };
}

const news = (date: string, title: string) => ({
  ...{ date, title, href: `changes.html#${date}`, html: `<p>${title}</p>` },
  id: `tag:club.example,${date}:x/${title}`,
});

const built = [
  course('slav', { news: [news('2026-11-20', 'b'), news('2026-10-01', 'd')] }),
  course('fran çais', {
    ...{ language: 'fr', author: 'A. Coach', cloth: clothOf(green) },
    files: [...course('').files, 'course-notes.0d.js'],
    news: [news('2026-11-25', 'a <b>'), news('2026-11-01', 'c')],
  }),
];
const shelf: Shelf = {
  ...{ title: 'Our courses', language: 'en', notation: 'letters', author: 'B. Teacher' },
  site: 'https://club.example/',
};
const frame = shelfFrame(shelf, built, { scripts: {}, styles: {}, fonts: [] });
const files = new Map(shelfFiles(shelf, built, frame).map(({ path, content }) => [path, content]));

test('scripts are told where each course stands and which data it has', () => {
  const [slav, french] = tableOf(built).courses;
  expect(slav).toMatchObject({
    at: 'slav/',
    table: 'course-table.0a1b2c.js',
    shortTitle: 'The slav',
  });
  expect(slav).not.toHaveProperty('notes');
  expect(french).toMatchObject({ at: 'fran%20%C3%A7ais/', notes: 'course-notes.0d.js' });
  expect(() => tableOf([course('x', { files: ['course-table.js'] })])).toThrow(
    /x was built without/,
  );
});

test('one feed has the news of all courses, the latest first, each under the name that it has at home', () => {
  const feed = files.get('feed.xml') ?? '';
  const ids = [...feed.matchAll(/<id>(tag:[^<]+)<\/id>/g)].map(([, id]) => id);
  expect(ids.map((id) => id?.split(/[,:]/)[2])).toEqual([
    '2026-11-25',
    '2026-11-20',
    '2026-11-01',
    '2026-10-01',
  ]);
  expect(feed).toContain('<entry xml:lang="fr">');
  expect(feed).toContain('href="https://club.example/fran%20%C3%A7ais/changes.html#2026-11-25"');
  expect(feed).toContain('<author><name>A. Coach</name></author><source>');
  expect(latestNews(built, 'en').map(({ title }) => title)).toEqual(['a <b>', 'b', 'c', 'd']);
});

// sitemaps.org, "Using Sitemap index files".
test('the sitemap leads to that of each course and to the pages of the shelf', () => {
  const found = [...(files.get('sitemap.xml') ?? '').matchAll(/<loc>([^<]+)/g)].map(
    ([, loc]) => loc,
  );
  expect(found).toEqual([
    'https://club.example/pages.xml',
    'https://club.example/slav/sitemap.xml',
    'https://club.example/fran%20%C3%A7ais/sitemap.xml',
  ]);
  expect(files.get('pages.xml')).toContain('<loc>https://club.example/practice.html</loc>');
  expect(files.get('robots.txt')).toContain('Sitemap: https://club.example/sitemap.xml');
});

test('a shelf without an address has neither feed nor sitemap', () => {
  const bare = { ...shelf, site: undefined };
  const bareFrame = shelfFrame(bare, built, { scripts: {}, styles: {}, fonts: [] });
  const paths = shelfFiles(bare, built, bareFrame).map(({ path }) => path);
  expect(paths.filter((path) => /xml|robots/.test(path))).toEqual([]);
  expect(bareFrame.feed).toBeUndefined();
});

test('a cover has the colours of its course, in both modes, and no others', () => {
  expect(clothSheet([course('a')])).toBeUndefined();
  const { content = '' } = clothSheet(built) ?? {};
  expect(content).toContain('.cloth-2{--cover:#1f4a2c}');
  expect(content).toContain(
    `[data-theme="dark"] .cloth-2{--cover:${defaultColour('cover', 'dark')}}`,
  );
  expect(content).not.toContain('.cloth-1');
});

test('a course for both sides and a page that it lacks are told as they are', () => {
  const [book] = booksOf([
    course('a', { side: 'both', files: ['index.html', 'de/practice.html'] }),
  ]);
  expect(book).toMatchObject({ side: 'both', pages: ['index.html'], subtitle: 'with a subtitle' });
  expect(book?.languages).toEqual([]);
  const languages = [{ tag: 'de', name: 'Deutsch' }];
  expect(booksOf([course('a', { languages })])[0]).toMatchObject({ languages });
  const quiet = shelfFrame(shelf, [course('a', { moves: 0 })], {
    scripts: {},
    styles: {},
    fonts: [],
  });
  expect(quiet.pages.map(({ file }) => file)).toEqual(['compare.html', 'search.html']);
});
