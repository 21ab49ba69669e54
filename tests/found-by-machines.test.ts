/**
 * What a site tells search engines and devices: W3C Web Application Manifest (members and their
 * meaning), schema.org's Course, the Sitemaps protocol 0.9, the Open Graph protocol.
 */
import { existsSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { cp } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { PNG } from 'pngjs';
import { afterAll, beforeAll, expect, test } from 'vitest';
import { linewright, pageFiles } from './browser/browser.ts';

const work = mkdtempSync(path.join(tmpdir(), 'linewright-machines-'));
const out = path.join(work, 'site');
const address = 'https://example.org/my-course';

beforeAll(async () => {
  const course = path.join(work, 'course');
  await cp('content/starter', course, { recursive: true });
  const settings = path.join(course, 'course.yaml');
  writeFileSync(settings, `${readFileSync(settings, 'utf8')}\nsite: ${address}\n`);
  await linewright(['build', course, '--out', out]);
});
afterAll(() => rmSync(work, { recursive: true, force: true }));

const read = (name: string) => readFileSync(path.join(out, name), 'utf8');
const attribute = (html: string, pattern: RegExp) => pattern.exec(html)?.[1];

/** The file in the folder that an address of the site means. */
function fileOf(url: string): string {
  expect(url.startsWith(`${address}/`), url).toBe(true);
  return path.join(out, new URL(url).pathname.slice('/my-course/'.length) || 'index.html');
}

test('every page links the manifest, and its icons have the sizes that it tells', () => {
  for (const name of pageFiles(out)) {
    expect(attribute(read(name), /<link rel="manifest" href="([^"]+)"/), name).toMatch(
      /course\.webmanifest$/,
    );
  }
  const manifest = JSON.parse(read('course.webmanifest'));
  expect(manifest).toMatchObject({ name: 'The Italian Game, quietly', lang: 'en', dir: 'ltr' });
  expect(['minimal-ui', 'standalone', 'fullscreen']).toContain(manifest.display);
  const inScope = new URL(manifest.start_url, `${address}/course.webmanifest`).href;
  expect(inScope.startsWith(new URL(manifest.scope, `${address}/`).href)).toBe(true);
  expect(existsSync(fileOf(inScope))).toBe(true);
  const icons: { src: string; type: string; sizes: string; purpose?: string }[] = manifest.icons;
  const drawn = icons.filter(({ type }) => type === 'image/png');
  for (const { src, sizes } of drawn) {
    const { width, height } = PNG.sync.read(readFileSync(path.join(out, src)));
    expect(`${width}x${height}`, src).toBe(sizes);
  }
  // Browsers ask for 192 and 512 pixels before they offer to install (common practice, no source).
  for (const purpose of ['any', 'maskable']) {
    const sizes = drawn.filter((icon) => icon.purpose === purpose).map((icon) => icon.sizes);
    expect(sizes).toEqual(['192x192', '512x512']);
  }
});

test('the contents page is a Course of schema.org, each chapter a part of it', () => {
  const data = (name: string) =>
    JSON.parse(
      attribute(read(name), /<script type="application\/ld\+json">(.*?)<\/script>/s) ?? '{}',
    );
  const course = data('index.html');
  expect(course).toMatchObject({
    '@context': 'https://schema.org',
    '@type': 'Course',
    name: 'The Italian Game, quietly',
    description: 'A first course to change, rename and make your own.',
    inLanguage: 'en',
    url: `${address}/`,
    provider: { '@type': 'Person', name: 'Your name' },
  });
  expect(existsSync(fileOf(course.image))).toBe(true);
  const parts: { name: string; url: string; position: number }[] = course.hasPart;
  expect(parts.map(({ position }) => position)).toEqual([1, 2]);
  for (const { url, name } of parts) {
    expect(read(path.basename(fileOf(url)))).toContain(`<h1>${name}</h1>`);
    const chapter = data(path.basename(fileOf(url)));
    expect(chapter).toMatchObject({ name, url, isPartOf: { '@id': course['@id'] } });
  }
});

test('addresses are told alike by the sitemap, the canonical link and the social card', () => {
  const listed = [...read('sitemap.xml').matchAll(/<loc>([^<]+)<\/loc>/g)].map(
    ([, url = '']) => url,
  );
  expect(listed.length).toBeGreaterThan(5);
  expect(new Set(listed).size).toBe(listed.length);
  // Robots ask for it at the root of a host only (RFC 9309, section 2.3), which this is not.
  expect(existsSync(path.join(out, 'robots.txt'))).toBe(false);
  for (const url of listed) {
    const html = readFileSync(fileOf(url), 'utf8');
    expect(attribute(html, /<link rel="canonical" href="([^"]+)"/)).toBe(url);
    expect(attribute(html, /<meta property="og:url" content="([^"]+)"/)).toBe(url);
    const card = attribute(html, /<meta property="og:image" content="([^"]+)"/) ?? '';
    expect(existsSync(fileOf(card)), card).toBe(true);
  }
});
