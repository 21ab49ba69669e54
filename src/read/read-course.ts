import type { MediaFault } from '../media/index.ts';
import { type ChapterOptions, readChapter } from './read-chapter.ts';
import { type CourseFrame, readFrame, repeatedIds } from './read-frame.ts';
import type { ChapterSyntax, CourseFiles, SourceFile } from './types.ts';

/** Reads the files of a course; pure, so that tests and editors can read what is not on a disk. */
export function readCourse(
  files: CourseFiles,
  options: Pick<ChapterOptions, 'frontMatter'> = {},
): CourseFrame & { readonly chapters: readonly ChapterSyntax[] } {
  const beside = filesBeside(files);
  const chapters = files.chapters.map((file) => readChapter(file, { ...options, ...beside }));
  const frame = readFrame(files, beside);
  return { ...frame, chapters, problems: [...frame.problems, ...repeatedIds(chapters)] };
}

/** What a chapter may name of the course's files. */
export interface FilesBeside {
  readonly media: ReadonlySet<string>;
  readonly unfit: ReadonlyMap<string, MediaFault>;
  readonly chapters: ReadonlySet<string>;
  readonly games: ReadonlyMap<string, SourceFile>;
}

export function filesBeside({
  chapters,
  games,
  media,
  unfit = new Map(),
}: CourseFiles): FilesBeside {
  return {
    media: new Set(media),
    unfit,
    chapters: new Set(chapters.map(({ path }) => path)),
    games: new Map(games.map((game) => [game.path, game])),
  };
}
