import type { ChapterSyntax } from '../read/index.ts';
import type { KeptChapter } from './kept-chapter.ts';
import { loadLines, saveLines } from './kept-lines.ts';
import type { AskedOfFiles } from './questions.ts';

/** A chapter as it was read. */
export interface ReadChapter {
  readonly syntax: ChapterSyntax;
  /** What reading it asked of the files beside it. */
  readonly asked: readonly AskedOfFiles[];
}

/** Chapters that were read before, by file and text. They are large, so each is parsed when it is asked for. */
export interface KeptSyntax {
  get(file: string, text: string): ReadChapter | undefined;
  /** The line that a chapter is kept as. */
  lineOf(file: string, text: string): string | undefined;
}

/** Loads the chapters of a course as they were read; none of those that other code has read. */
export async function loadSyntax(cache: string, course: string): Promise<KeptSyntax> {
  const lines = new Map(
    (await loadLines(cache, course, 'syntax')).map((line) => [nameIn(line), line]),
  );
  const lineOf = (file: string, text: string) => lines.get(nameOf(file, text));
  return {
    lineOf,
    get(file, text) {
      const line = lineOf(file, text);
      return line === undefined
        ? undefined
        : (JSON.parse(line.slice(line.indexOf('\t') + 1)) as ReadChapter);
    },
  };
}

/** Keeps the chapters that this process has read, and of the others what is kept already. */
export async function saveSyntax(
  cache: string,
  course: string,
  chapters: Iterable<KeptChapter>,
  before: KeptSyntax,
): Promise<void> {
  const lines = [...chapters].flatMap(({ file, text, asked, live }) => {
    const known = before.lineOf(file, text);
    if (live?.wasRead !== true) return known ?? [];
    return `${nameOf(file, text)}\t${JSON.stringify({ syntax: live.syntax, asked } satisfies ReadChapter)}`;
  });
  await saveLines(cache, course, 'syntax', lines);
}

function nameOf(file: string, text: string): string {
  return JSON.stringify([file, text]);
}

/** JSON has no tab outside of its strings' escapes. */
function nameIn(line: string): string {
  return line.slice(0, line.indexOf('\t'));
}
