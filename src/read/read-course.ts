import { documentsOf } from './documents.ts';
import { filesBeside } from './files-beside.ts';
import { type ChapterOptions, readChapter } from './read-chapter.ts';
import { readFrame, repeatedIds } from './read-frame.ts';
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
