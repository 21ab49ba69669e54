import { codeHash, openLineStore } from '../files/index.ts';
import type { ChapterSyntax } from '../read/index.ts';
import type { KeptChapter } from './kept-chapter.ts';
import { type AskedOfFiles, hashOf } from './questions.ts';

/** A parsed chapter. */
export interface ReadChapter {
  readonly syntax: ChapterSyntax;
  /** What parsing it asked of the other files. */
  readonly asked: readonly AskedOfFiles[];
}

/** Chapters parsed before, by file and text. They are large, so each is loaded when asked for. */
export interface KeptSyntax {
  get(file: string, text: string): ReadChapter | undefined;
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
  return {
    get(file, text) {
      const line = store.get(file);
      // A hash of the text, a tab, JSON.
      const tab = line?.indexOf('\t') ?? -1;
      if (line === undefined || line.toString('utf8', 0, tab) !== text) return undefined;
      return JSON.parse(line.toString('utf8', tab + 1)) as ReadChapter;
    },
    async save(chapters) {
      const names = new Set<string>();
      for (const { file, text, asked, live } of chapters) {
        names.add(file);
        if (live?.wasRead !== true) continue;
        const read: ReadChapter = { syntax: live.syntax, asked };
        store.set(file, () => Buffer.from(`${text}\t${JSON.stringify(read)}`));
      }
      await store.save(names);
    },
  };
}
