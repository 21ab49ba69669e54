import path from 'node:path';
import { type CourseEntry, inShelf, reportShelf } from '../../check/index.ts';
import { type Diagnostic, sortDiagnostics } from '../../diagnostics/index.ts';
import { courseId } from '../../model/index.ts';
import { findShelf, readSettings, type ShelfFiles, type ShelvedFolder } from '../../read/index.ts';

/** A course of a shelf, of which only the settings are read. */
export interface ShelvedCourse extends ShelvedFolder {
  readonly id: string;
}

/** What is held of a course that has been checked: little enough to hold for all. */
export interface CourseSeen {
  readonly course: ShelvedFolder;
  readonly entry: CourseEntry;
  /** As the course itself has them: paths are relative to its folder. */
  readonly diagnostics: readonly Diagnostic[];
}

/** Paths are relative to the shelf's folder. */
export interface ShelfFindings {
  /** Findings about the shelf as a whole. */
  readonly ofShelf: readonly Diagnostic[];
  /** These and the findings of all courses, in the order of the shelf. */
  readonly all: readonly Diagnostic[];
}

/** A shelf. Open its courses one by one, to hold no more than one. */
export interface OpenShelf {
  readonly folder: string;
  readonly files: ShelfFiles;
  /** In the order of the shelf. */
  readonly courses: readonly ShelvedCourse[];
  /** The folder of a course on the disk. */
  readonly folderOf: (course: ShelvedFolder) => string;
  readonly findings: (seen: readonly CourseSeen[]) => ShelfFindings;
}

/** @throws NoCourseError where the folder is also a course. */
export async function openShelf(folder: string): Promise<OpenShelf> {
  const files = await findShelf(folder);
  const rank = ({ place: { file } }: Diagnostic) =>
    files.courses.findIndex((course) => file.startsWith(`${course.path}/`));
  return {
    folder,
    files,
    courses: files.courses.map((course) => ({ ...course, id: idOf(course) })),
    folderOf: (course) => path.join(folder, course.path),
    findings(seen) {
      const ofShelf = reportShelf({
        problems: files.problems,
        courses: seen.map(({ course, entry }) => ({
          folder: course.path,
          place: course.place,
          entry,
        })),
      });
      const ofCourses = seen.flatMap(({ course, diagnostics }) =>
        diagnostics.map((diagnostic) => inShelf(diagnostic, course.path)),
      );
      // Sorting is stable, so the order within a course stays.
      const all = sortDiagnostics([...ofCourses, ...ofShelf]).sort((a, b) => rank(a) - rank(b));
      return { ofShelf, all };
    },
  };
}

function idOf({ path: folder, settings }: ShelvedFolder): string {
  const draft = settings && readSettings(settings);
  // A title that cannot be read has an error of its own.
  return draft?.isWhole ? courseId(draft) : folder;
}
