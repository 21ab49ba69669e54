import type { PiecesLanguage } from '../chess/index.ts';
import type { MediaFault } from '../media/index.ts';
import { documentsOf } from './documents.ts';
import { type ChapterOptions, readChapter } from './read-chapter.ts';
import { readFrame, repeatedIds } from './read-frame.ts';
import { piecesOf } from './settings/read-settings.ts';
import type { CourseFiles, CourseSyntax, SourceFile } from './types.ts';

/** Reads the files of a course; pure, so that tests and editors can read what is not on a disk. */
export function readCourse(
  files: CourseFiles,
  options: Pick<ChapterOptions, 'frontMatter'> = {},
): CourseSyntax {
  const beside = filesBeside(files);
  const read = (file: SourceFile) => readChapter(file, { ...options, ...beside });
  const all = { chapters: files.chapters.map(read), pages: (files.pages ?? []).map(read) };
  const frame = readFrame(files, beside);
  return { ...frame, ...all, problems: [...frame.problems, ...repeatedIds(documentsOf(all))] };
}

/** What a chapter may name of the course's files. */
export interface FilesBeside {
  readonly media: ReadonlySet<string>;
  readonly unfit: ReadonlyMap<string, MediaFault>;
  /** The chapters, and the pages beside them. */
  readonly chapters: ReadonlySet<string>;
  readonly games: ReadonlyMap<string, SourceFile>;
  /** The letters that moves are written in, where they are not those of SAN. */
  readonly pieces?: PiecesLanguage | undefined;
}

export function filesBeside(files: CourseFiles): FilesBeside {
  const { games, media, settings, unfit = new Map() } = files;
  return {
    media: new Set(media),
    unfit,
    chapters: new Set(documentsOf(files).map(({ path }) => path)),
    games: new Map(games.map((game) => [game.path, game])),
    pieces: settings && piecesOf(settings),
  };
}
