import { type Diagnostic, nearestName } from '../../diagnostics/index.ts';
import { buildCourse } from '../../model/index.ts';
import {
  type FolderSeen,
  placeCourses,
  readCourse,
  readShelfSettings,
  type SourceFile,
} from '../../read/index.ts';
import { summariseChapter } from '../chapter-summary.ts';
import { checkOptions } from '../check-course.ts';
import { makeCourseEntry } from '../shelf/course-entry.ts';
import { reportShelf, rulesOfShelf } from '../shelf/report-shelf.ts';
import { makeCourseIndex } from '../view/index.ts';

/** What the rules of a shelf find in an example with a `shelf.yaml`, whose files are in no folder of a disk. */
export function runShelf(files: readonly SourceFile[], shelf: SourceFile): Diagnostic[] {
  const draft = readShelfSettings(shelf);
  const seen = draft.folders.map(({ written }) => look(files, written));
  const { courses, problems } = placeCourses(draft.folders, seen);
  return reportShelf({
    problems: [...draft.problems, ...problems],
    courses: courses.map(({ path, place }) => ({
      folder: path,
      place,
      entry: entryOf(filesIn(files, path)),
    })),
  });
}

function look(files: readonly SourceFile[], written: string): FolderSeen {
  const path = written.replace(/^\.(?:\/|$)|\/$/g, '');
  const found = { path, real: path };
  if (path.startsWith('..')) return { ...found, kind: 'outside' };
  const own = filesIn(files, path);
  const settings = own.find((file) => file.path === 'course.yaml');
  if (settings) return { ...found, kind: 'course', settings };
  const folders = files.map((file) => file.path.split('/')[0] ?? '');
  if (own.length > 0) return { ...found, kind: 'folder' };
  return { ...found, kind: 'missing', near: nearestName(path, folders) };
}

function filesIn(files: readonly SourceFile[], folder: string): SourceFile[] {
  return files.flatMap(({ path, text }) =>
    path.startsWith(`${folder}/`) ? [{ path: path.slice(folder.length + 1), text }] : [],
  );
}

function entryOf(files: readonly SourceFile[]) {
  const settings = files.find(({ path }) => path === 'course.yaml');
  const course = buildCourse(
    readCourse({
      ...(settings && { settings }),
      chapters: files.filter(({ path }) => path.startsWith('chapters/')),
      games: [],
      media: [],
      problems: [],
    }),
  );
  const { side } = checkOptions(course.settings);
  const summaries = course.chapters.map((chapter) => summariseChapter(chapter, side));
  const index = makeCourseIndex(summaries);
  return makeCourseEntry({ settings: course.settings, summaries, index }, rulesOfShelf);
}
