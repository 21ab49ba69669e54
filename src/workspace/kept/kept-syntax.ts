import { codeHash, openLineStore } from '../../files/index.ts';
import type { ChapterSyntax } from '../../read/index.ts';
import { type AskedOfFiles, hashOf } from '../questions.ts';
import type { KeptChapter } from './kept-chapter.ts';

/** A parsed chapter. */
export interface ReadChapter {
  readonly syntax: ChapterSyntax;
  /** What parsing it asked of the other files. */
  readonly asked: readonly AskedOfFiles[];
}

/** Chapters parsed before, by file and text. They are large, so each is loaded when asked for. */
export interface KeptSyntax {
  get(file: string, text: string): ReadChapter | undefined;
  /** Keeps a chapter that this process has parsed, so that it need not stay in memory. */
  set(file: string, text: string, read: ReadChapter): void;
  /** Keeps the chapters that this process has parsed, and what is kept of the others. */
  save(chapters: Iterable<KeptChapter>): Promise<void>;
}

/** Courses that are kept; the oldest go first. */
const mostCourses = 50;

/** Opens the parsed chapters of a course; none that other code has parsed. */
export async function openSyntax(cache: string, course: string): Promise<KeptSyntax> {
  const store = openLineStore(cache, `syntax-${hashOf(course)}`, {
    sealedFor: await codeHash(),
    mostStores: mostCourses,
  });
  /** A body is asked for several times in a row. */
  let last:
    | { readonly file: string; readonly text: string; readonly read: ReadChapter }
    | undefined;
  return {
    get(file, text) {
      if (last?.file === file && last.text === text) return last.read;
      const line = store.get(file);
      // A hash of the text, a tab, JSON.
      const tab = line?.indexOf('\t') ?? -1;
      if (line === undefined || line.toString('utf8', 0, tab) !== text) return undefined;
      const read = JSON.parse(line.toString('utf8', tab + 1)) as ReadChapter;
      last = { file, text, read };
      return read;
    },
    set(file, text, read) {
      store.set(file, lineOf(text, read));
    },
    async save(chapters) {
      const names = new Set<string>();
      for (const { file, text, asked, live } of chapters) {
        names.add(file);
        const syntax = live?.syntax;
        if (!live?.wasRead || syntax === undefined) continue;
        store.set(file, () => lineOf(text, { syntax, asked }));
      }
      await store.save(names);
    },
  };
}

function lineOf(text: string, read: ReadChapter): Buffer {
  return Buffer.from(`${text}\t${JSON.stringify(read)}`);
}
