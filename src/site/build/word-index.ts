import { copyFile, mkdir, writeFile } from 'node:fs/promises';
import { dirname, join } from 'node:path';
import type { PagefindIndex } from 'pagefind';
import { escapeXml } from '../../draw/xml.ts';
import type { ChapterPage, SiteData } from '../site-data.ts';

/** Where the index lies in a site. */
export const wordIndexFolder = 'pagefind';

/** What is not the author's text, or stands a second time among the answers. */
const notText = ['svg', '.glyph', '.pictures', '.exercise details'];

/** Ready-made controls that come with an index and that no page uses. */
const unused = /^pagefind-(?:ui|modular-ui|component-ui|highlight)\./;

/**
 * Writes the index for the search by words. It is made of the chapters' text as the pages have it,
 * so it need not wait for them. The indexer is a program for the machine that builds; where it
 * cannot run, nothing is written and the reason comes back.
 */
export async function writeWordIndex(data: SiteData, out: string): Promise<string | undefined> {
  let index: PagefindIndex;
  try {
    index = await openIndex();
  } catch (error) {
    return error instanceof Error ? (error.message.split('\n', 1)[0] ?? '') : String(error);
  }
  await Promise.all(
    data.chapters.map(async (chapter) => {
      const content = textPage(chapter, data.language);
      const { errors } = await index.addHTMLFile({ url: `${chapter.id}.html`, content });
      if (errors.length > 0) throw new Error(`${chapter.id}: ${errors.join('; ')}`);
    }),
  );
  const { files, errors } = await index.getFiles();
  if (errors.length > 0) throw new Error(errors.join('; '));
  await index.deleteIndex();
  for (const { path, content } of files) {
    if (unused.test(path)) continue;
    const file = join(out, wordIndexFolder, path);
    await mkdir(dirname(file), { recursive: true });
    await writeFile(file, content);
  }
  const licence = new URL('../LICENSE/LICENSE', import.meta.resolve('pagefind'));
  await copyFile(licence, join(out, wordIndexFolder, 'licence.txt'));
  return undefined;
}

async function openIndex(): Promise<PagefindIndex> {
  // Its process ends with ours, and waits for the next build where ours goes on.
  const { createIndex } = await import('pagefind');
  const { index, errors } = await createIndex({ rootSelector: 'main', excludeSelectors: notText });
  if (index === undefined) throw new Error(errors.join('; '));
  return index;
}

/** A chapter as its page has it, without all that is the same on every page. */
function textPage({ title, summary = '', html }: ChapterPage, language: string): string {
  return (
    `<!doctype html><html lang="${escapeXml(language)}"><title></title><body><main>` +
    `<h1>${escapeXml(title)}</h1><p>${escapeXml(summary)}</p>${html}</main></body></html>`
  );
}
