import { readFile } from 'node:fs/promises';
import type { PagefindIndex } from 'pagefind';
import { escapeXml } from '../../draw/xml.ts';
import type { ChapterPage } from '../site-data.ts';

/** Where the index lies in a site. */
export const wordIndexFolder = 'pagefind';

/** What is not the author's text, or stands a second time among the answers. */
const notText = ['svg', '.glyph', '.pictures', '.exercise details'];

/** Ready-made controls that come with an index and that no page uses. */
const unused = /^pagefind-(?:ui|modular-ui|component-ui|highlight)\./;

/** The index for the search by words, made of the chapters' text as the pages have it. */
export interface WordIndex {
  /** Takes a chapter; settles when the indexer has room for another one. */
  add(chapter: ChapterPage): Promise<void>;
  /**
   * The files of the index, when all chapters were added.
   * @throws NoWordIndex
   */
  files(): Promise<readonly IndexFile[]>;
}

export interface IndexFile {
  /** Relative to the site, with `/`. */
  readonly path: string;
  readonly content: Uint8Array;
}

/** How many chapters the indexer, a process of its own, may be behind. */
const mostBehind = 64;

/** Begins an index. Its process gets ready while the first pages are made. */
export function startWordIndex(language: string): WordIndex {
  const opening = openIndex();
  // Waited for below; a fault that comes before is none that nobody hears of.
  opening.catch(() => {});
  const running = new Set<Promise<void>>();
  let fault: { readonly error: unknown } | undefined;

  const take = async (chapter: ChapterPage): Promise<void> => {
    const index = await opening.catch(() => undefined);
    const url = `${chapter.id}.html`;
    const answer = await index?.addHTMLFile({ url, content: textPage(chapter, language) });
    const errors = answer?.errors ?? [];
    if (errors.length > 0) throw new Error(`${chapter.id}: ${errors.join('; ')}`);
  };
  return {
    async add(chapter) {
      const taking: Promise<void> = take(chapter)
        .catch((error: unknown) => {
          fault ??= { error };
        })
        .finally(() => running.delete(taking));
      running.add(taking);
      if (running.size >= mostBehind) await Promise.race(running);
    },
    async files() {
      await Promise.all(running);
      if (fault !== undefined) throw fault.error;
      return filesOf(await opening);
    },
  };
}

/** The indexer, a program for the machine that builds, cannot run there: `message` says why. */
export class NoWordIndex extends Error {}

async function openIndex(): Promise<PagefindIndex> {
  try {
    // Its process ends with ours, and waits for the next build where ours goes on.
    const { createIndex } = await import('pagefind');
    const { index, errors } = await createIndex({
      rootSelector: 'main',
      excludeSelectors: notText,
    });
    if (index === undefined) throw new Error(errors.join('; '));
    return index;
  } catch (error) {
    const said = error instanceof Error ? error.message : String(error);
    throw new NoWordIndex(said.split('\n', 1)[0]);
  }
}

async function filesOf(index: PagefindIndex): Promise<IndexFile[]> {
  const { files, errors } = await index.getFiles();
  if (errors.length > 0) throw new Error(errors.join('; '));
  await index.deleteIndex();
  const licence = new URL('../LICENSE/LICENSE', import.meta.resolve('pagefind'));
  return [
    ...files.filter(({ path }) => !unused.test(path)),
    { path: 'licence.txt', content: await readFile(licence) },
  ].map(({ path, content }) => ({ path: `${wordIndexFolder}/${path}`, content }));
}

/** A chapter as its page has it, without all that is the same on every page. */
function textPage({ title, summary = '', html }: ChapterPage, language: string): string {
  return (
    `<!doctype html><html lang="${escapeXml(language)}"><title></title><body><main>` +
    `<h1>${escapeXml(title)}</h1><p>${escapeXml(summary)}</p>${html}</main></body></html>`
  );
}
