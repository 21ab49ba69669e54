import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, expect, test } from 'vitest';
import { renderCourse } from '../render/testing/render-course.ts';
import { keptFiles } from './kept-files.ts';

const folder = mkdtempSync(path.join(tmpdir(), 'linewright-kept-'));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

// Whatever a name has in it, a picture is kept under the very address that the page asks for.
test('a picture is kept under the address by which its page shows it', async () => {
  const names = [
    'a b.png',
    'Plan (2), final.png',
    'C#.png',
    'Why?.png',
    '50%.png',
    'a&b=c+d;e@f$.png',
  ];
  mkdirSync(path.join(folder, 'media'));
  for (const name of names) writeFileSync(path.join(folder, 'media', name), '');
  const files = names.map((name) => `media/${name}`);
  const { hashes } = await keptFiles(folder, files);
  const images = files.map((file) => `![x](${file.split('/').map(encodeURIComponent).join('/')})`);
  const [html = ''] = renderCourse([images.join('\n\n')], { media: files });
  const shown = [...html.matchAll(/ src="([^"]*)"/g)].map(([, src]) =>
    (src ?? '').replaceAll('&#x26;', '&'),
  );
  expect(shown).toEqual(Object.keys(hashes));
  expect(shown.map((src) => decodeURIComponent(new URL(src, 'https://a/').pathname))).toEqual(
    files.map((file) => `/${file}`),
  );
});
