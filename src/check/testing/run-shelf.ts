import { type Diagnostic, nearestName } from '../../diagnostics/index.ts';
import { buildCourse, type Course } from '../../model/index.ts';
import {
  type CourseFiles,
  type FolderSeen,
  placeCourses,
  readCourse,
  readShelfSettings,
  type SourceFile,
} from '../../read/index.ts';
import { summariseChapter } from '../chapter-summary.ts';
import { checkCourse } from '../check-course.ts';
import { makeCourseEntry } from '../shelf/course-entry.ts';
import { inShelf, reportShelf, rulesOfShelf } from '../shelf/report-shelf.ts';
import { shelfAround } from '../shelf/shelf-around.ts';
import { makeCourseIndex } from '../view/index.ts';

/** What is found in an example with a `shelf.yaml`, whose files are in no folder of a disk. */
export function runShelf(files: readonly SourceFile[], shelf: SourceFile): Diagnostic[] {
  const draft = readShelfSettings(shelf);
  const seen = draft.folders.map(({ written }) => look(files, written));
  const { courses, problems } = placeCourses(draft.folders, seen);
  const made = courses.map(({ path, place }) => {
    const course = courseOf(filesIn(files, path));
    return { folder: path, place, course, entry: entryOf(course) };
  });
  const entries = made.map(({ entry }) => entry);
  return [
    ...reportShelf({ problems: [...draft.problems, ...problems], courses: made }),
    ...made.flatMap(({ folder, course, entry }) => {
      const around: CourseFiles['shelf'] = shelfAround(entry.id, entries, { together: true });
      return checkCourse(course, undefined, around).diagnostics.map((found) =>
        inShelf(found, folder),
      );
    }),
  ];
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

function courseOf(files: readonly SourceFile[]): Course {
  const settings = files.find(({ path }) => path === 'course.yaml');
  return buildCourse(
    readCourse({
      ...(settings && { settings }),
      chapters: files.filter(({ path }) => path.startsWith('chapters/')),
      games: [],
      media: [],
      problems: [],
    }),
  );
}

function entryOf({ settings, chapters, news }: Course) {
  const summaries = chapters.map((chapter) => summariseChapter(chapter, settings.side));
  const index = makeCourseIndex(summaries);
  return makeCourseEntry({ settings, summaries, index, news, drafts: new Set() }, rulesOfShelf);
}
