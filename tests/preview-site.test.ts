/** What `dev` makes one by one, when it is asked for, is what `build` publishes. */
import { readFile } from 'node:fs/promises';
import path from 'node:path';
import { beforeAll, describe, expect, inject, test } from 'vitest';
import { previewCourse } from '../src/check/index.ts';
import { loadCourse } from '../src/cli/load-course.ts';
import { listFiles } from '../src/output/index.ts';
import { courseDownloads } from '../src/pipeline/build/index.ts';
import { cacheFolder } from '../src/pipeline/index.ts';
import { previewSite, type SitePreview } from '../src/site/index.ts';
import { demoSite } from './browser/browser.ts';

const folder = 'demo-course';
/** For reading offline, for the host and for crawlers: a preview has none of them. */
const publishedOnly = /^(?:offline\.js|linewright\.json|robots\.txt|sitemap\.xml)$/;

let built: string;
let preview: SitePreview;

beforeAll(async () => {
  built = await demoSite();
  const { checked, course, diagnostics } = await loadCourse(folder);
  if (!checked) throw new Error('the example course has errors');
  preview = await previewSite(previewCourse(course, diagnostics), {
    folder,
    cacheDir: cacheFolder(),
    downloads: courseDownloads(checked, folder, { keep: (_kind, _inputs, make) => make() }),
  });
});

const published = (file: string) => readFile(path.join(built, file));
const bytesOf = (content: Uint8Array | string) => Buffer.from(content as Uint8Array);

/** Without what only a published site has: its worker, and the address of its page for missing pages. */
function comparable(page: Buffer): string {
  return page
    .toString('utf8')
    .replace(/\s*<p class="edition"[\s\S]*?<\/p>/, '')
    .replace(/<li><b>Without a network<\/b>.*?<\/li>/, '')
    .replace(/(?<=<h2 id="offline">).*?(?=<\/section>)/s, '')
    .replaceAll(/(?<=(?:href|src|data-[a-z]+)=")\/club\/tarrasch\//g, '');
}

describe('the example course', () => {
  test('every page and file is there, and no other', async () => {
    const files = (await listFiles(built)).filter((file) => !publishedOnly.test(file));
    expect(files.length).toBeGreaterThan(200);
    for (const file of files) {
      if (file.startsWith('assets/')) continue;
      if (file.startsWith('media/')) {
        expect(await preview.copyOfMedia(file, inject('runFolder')), file).toContain(file);
        continue;
      }
      const content = await preview.find(file);
      if (content === undefined) throw new Error(`the preview has no ${file}`);
      if (file.endsWith('.html')) {
        expect(comparable(bytesOf(content)), file).toBe(comparable(await published(file)));
      } else if (!file.startsWith('pagefind/')) {
        expect(bytesOf(content).equals(await published(file)), file).toBe(true);
      }
    }
    for (const file of ['nothing.html', 'boards/nothing.html', 'course-tables.js', '', 'media/x']) {
      expect(await preview.find(file), file).toBeUndefined();
    }
    expect(await preview.copyOfMedia('course.yaml', inject('runFolder'))).toBeUndefined();
  });

  test('nothing that pages have in `dev` alone is in what is built', async () => {
    for (const file of await listFiles(built)) {
      if (!/\.(?:html|css|js|json|svg|xml)$/.test(file)) continue;
      // A class, an id or an address of the desk.
      expect((await published(file)).toString('latin1'), file).not.toMatch(
        /desk-(?:note|sign|at|slip|error|warning)|linewright-live|data-token/,
      );
    }
  });
});
