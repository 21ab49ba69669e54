import { createHash } from 'node:crypto';
import { wordFolders } from '../../contract/index.ts';
import { escapeXml } from '../../draw/xml.ts';
import type { Keep } from '../index.ts';
import type { ChapterPage } from '../site-data.ts';
import { packFiles, unpackFiles } from './pack-files.ts';
import { type IndexFile, indexWords, type TextPage } from './word-index.ts';

/** The index for the search by words, made of the chapters' text as the pages have it, in parts for a long course. */
export interface WordIndexes {
  add(chapter: ChapterPage): void;
  /**
   * The files of all parts, by their paths in the site, when all chapters were added. A part whose chapters an
   * earlier build had as they are is taken from there.
   * @throws NoWordIndex
   */
  files(keep: Keep): AsyncGenerator<IndexFile>;
}

/** @param chapters how many the course has. */
export function wordIndexes(language: string, chapters: number): WordIndexes {
  const parts = wordFolders(chapters).map((folder) => ({ folder, pages: [] as TextPage[] }));
  return {
    add(chapter) {
      // By its own address, so that a chapter that is put in between moves no other to another part.
      const part = parts[numberOf(chapter.id) % parts.length];
      part?.pages.push({ url: `${chapter.id}.html`, content: textPage(chapter, language) });
    },
    async *files(keep) {
      for (const [number, { folder, pages }] of parts.entries()) {
        const isFirst = number === 0;
        const packed = await keep(`words-${number + 1}`, [hashOf(pages)], async () =>
          packFiles(await indexWords(pages, isFirst)),
        );
        pages.length = 0;
        for (const { path, content } of unpackFiles(packed)) {
          yield { path: `${folder}/${path}`, content };
        }
      }
    },
  };
}

/** A chapter as its page has it, without all that is the same on every page. */
function textPage({ title, summary = '', html }: ChapterPage, language: string): string {
  return (
    `<!doctype html><html lang="${escapeXml(language)}"><title></title><body><main>` +
    `<h1>${escapeXml(title)}</h1><p>${escapeXml(summary)}</p>${html}</main></body></html>`
  );
}

function numberOf(id: string): number {
  return createHash('sha256').update(id).digest().readUInt32BE();
}

function hashOf(pages: readonly TextPage[]): string {
  const hash = createHash('sha256');
  for (const { url, content } of pages) hash.update(`${url}\0${content.length}\0${content}`);
  return hash.digest('hex');
}
