import { readFile } from 'node:fs/promises';
import type { PagefindIndex } from 'pagefind';

/** Elements that are not the author's text, or stand again among the answers. */
const notText = ['svg', '.glyph', '.pictures', '.exercise details'];

/** Controls that Pagefind adds and no page uses. */
const unused = /^pagefind-(?:ui|modular-ui|component-ui|highlight)\./;
/** The searching code, which the first folder has for all. */
const searching = /^(?:pagefind(?:-worker)?\.js|wasm\..*)$/;

export interface TextPage {
  /** Path of its page in the site. */
  readonly url: string;
  /** An HTML document that has its text alone. */
  readonly content: string;
}

export interface IndexFile {
  /** Relative to the folder of the index, with `/`. */
  readonly path: string;
  readonly content: Uint8Array;
}

/** Chapters that may wait for the indexer, a process of its own. */
const mostBehind = 64;

/**
 * The files of an index for the search by words.
 * @param isFirst whether to include the searching code.
 * @throws NoWordIndex
 */
export async function indexWords(
  pages: Iterable<TextPage>,
  isFirst: boolean,
): Promise<IndexFile[]> {
  const index = await openIndex();
  const running = new Set<Promise<void>>();
  let fault: { readonly error: unknown } | undefined;
  const take = async (page: TextPage): Promise<void> => {
    const { errors } = await index.addHTMLFile(page);
    if (errors.length > 0) throw new Error(`${page.url}: ${errors.join('; ')}`);
  };
  for (const page of pages) {
    const taking: Promise<void> = take(page)
      .catch((error: unknown) => {
        fault ??= { error };
      })
      .finally(() => running.delete(taking));
    running.add(taking);
    if (running.size >= mostBehind) await Promise.race(running);
  }
  await Promise.all(running);
  if (fault !== undefined) throw fault.error;
  return filesOf(index, isFirst);
}

/** The indexer cannot run on this machine: `message` says why. */
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

async function filesOf(index: PagefindIndex, isFirst: boolean): Promise<IndexFile[]> {
  const { files, errors } = await index.getFiles();
  if (errors.length > 0) throw new Error(errors.join('; '));
  await index.deleteIndex();
  if (!isFirst) return files.filter(({ path }) => !unused.test(path) && !searching.test(path));
  const licence = new URL('../LICENSE/LICENSE', import.meta.resolve('pagefind'));
  return [
    ...files.filter(({ path }) => !unused.test(path)),
    { path: 'licence.txt', content: await readFile(licence) },
  ];
}
