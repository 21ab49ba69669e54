import { createHash } from 'node:crypto';
import { wordFolders } from '../../contract/index.ts';
import { escapeXml } from '../../draw/xml.ts';
import { once } from '../once.ts';
import type { DocumentPage, Keep } from '../site-data.ts';
import { packFiles, unpackFiles } from './pack-files.ts';
import { type IndexFile, indexWords, type TextPage } from './word-index.ts';

/** The index of words, made of the chapters' text as on their pages; in parts for a long course. */
export interface WordIndexes {
  add(chapter: IndexedChapter): void;
  /** The parts, once all chapters have been added. */
  parts(): readonly WordIndex[];
}

export interface IndexedChapter {
  readonly id: string;
  /** Gives the chapter's page when it is indexed. */
  readonly page: () => Pick<DocumentPage, 'title' | 'summary' | 'html'>;
  /** A print of all that is indexed; default: of its text. */
  readonly print?: (() => string) | undefined;
}

export interface WordIndex {
  readonly name: string;
  /** A print of all that it is made of. */
  readonly print: () => string;
  /**
   * The files by path in the site, of an earlier build if the chapters are the same.
   * @throws NoWordIndex
   */
  readonly files: (keep: Keep) => Promise<IndexFile[]>;
}

/** @param chapters how many the course has. */
export function wordIndexes(language: string, chapters: number): WordIndexes {
  const folders = wordFolders(chapters).map((folder) => ({
    folder,
    chapters: [] as IndexedChapter[],
  }));
  return {
    add(chapter) {
      // By its address, so that a new chapter moves no other to another part.
      folders[numberOf(chapter.id) % folders.length]?.chapters.push(chapter);
    },
    parts: () =>
      folders.map(({ folder, chapters }, number): WordIndex => {
        const name = `words-${number + 1}`;
        const print = once(() => printOf(chapters, language));
        const make = async () =>
          packFiles(await indexWords(textPages(chapters, language), number === 0));
        return {
          name,
          print,
          async files(keep) {
            const files = unpackFiles(await keep(name, [print()], make));
            return files.map(({ path, content }) => ({ path: `${folder}/${path}`, content }));
          },
        };
      }),
  };
}

function* textPages(chapters: readonly IndexedChapter[], language: string): Generator<TextPage> {
  for (const { id, page } of chapters) {
    yield { url: `${id}.html`, content: textPage(page(), language) };
  }
}

function printOf(chapters: readonly IndexedChapter[], language: string): string {
  const hash = createHash('sha256').update(language);
  for (const { id, page, print } of chapters) {
    hash.update(`${id}\0${print?.() ?? textPage(page(), language)}\0`);
  }
  return hash.digest('hex');
}

/** A chapter as its page has it, without all that is the same on every page. */
function textPage(
  { title, summary = '', html }: ReturnType<IndexedChapter['page']>,
  language: string,
): string {
  return (
    `<!doctype html><html lang="${escapeXml(language)}"><title></title><body><main>` +
    `<h1>${escapeXml(title)}</h1><p>${escapeXml(summary)}</p>${html}</main></body></html>`
  );
}

function numberOf(id: string): number {
  return createHash('sha256').update(id).digest().readUInt32BE();
}
