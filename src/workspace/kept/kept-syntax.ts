import { codeHash, openLineStore, tabbed } from '../../files/index.ts';
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
  /** The text of a chapter alone, without its moves. */
  body(file: string, text: string): ChapterSyntax['body'] | undefined;
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
  const find = (file: string, text: string): readonly Buffer[] | undefined => {
    const line = store.get(file);
    const values = line && valuesIn(line);
    return values?.[0]?.equals(Buffer.from(text)) ? values.slice(1) : undefined;
  };
  /** A body is asked for several times in a row. */
  let last:
    | { readonly file: string; readonly text: string; readonly body: ChapterSyntax['body'] }
    | undefined;
  return {
    get(file, text) {
      const [rest, body] = find(file, text) ?? [];
      if (rest === undefined || body === undefined) return undefined;
      const { syntax, asked } = parse<Omit<ReadChapter, 'syntax'> & { syntax: Bodiless }>(rest);
      return { syntax: { ...syntax, body: parse(body) }, asked };
    },
    body(file, text) {
      if (last?.file === file && last.text === text) return last.body;
      const [, found] = find(file, text) ?? [];
      if (found === undefined) return undefined;
      const body = parse<ChapterSyntax['body']>(found);
      last = { file, text, body };
      return body;
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

type Bodiless = Omit<ChapterSyntax, 'body'>;

/** A hash of the text, the chapter without its body, and the body, with tabs between them, which JSON has in no value. */
function lineOf(text: string, { asked, syntax: { body, ...syntax } }: ReadChapter): Buffer {
  return tabbed([text, JSON.stringify({ asked, syntax }), JSON.stringify(body)]);
}

function valuesIn(line: Buffer): readonly Buffer[] {
  const first = line.indexOf('\t');
  const second = line.indexOf('\t', first + 1);
  return [line.subarray(0, first), line.subarray(first + 1, second), line.subarray(second + 1)];
}

function parse<Value>(bytes: Buffer): Value {
  return JSON.parse(bytes.toString('utf8')) as Value;
}
