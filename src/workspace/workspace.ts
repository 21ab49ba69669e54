import type { CheckResult, CourseEntry } from '../check/index.ts';
import type { Diagnostic } from '../diagnostics/index.ts';
import type { Course } from '../model/index.ts';
import type { CourseFiles } from '../read/index.ts';
import type { UpdateOptions } from './chapter-now.ts';
import { compareFresh, comparesFresh } from './compare-fresh.ts';
import type { KeptChapter } from './kept-chapter.ts';
import { type Update, updateCourse } from './update-course.ts';
import { withDrafts } from './with-drafts.ts';

/** A course as it stands now. */
export interface CurrentCourse {
  /** All findings, in the order of the text, whether they were found now or kept. Chapters are checked for them. */
  readonly diagnostics: readonly Diagnostic[];
  /** What it was made of: without its drafts where they were left out. */
  readonly files: CourseFiles;
  /** How many chapters it has. */
  readonly chapters: number;
  /** How many different positions its blocks of moves have. */
  readonly positions: number;
  /** The whole model, of which each chapter is played when somebody first looks at it. */
  course(): Course;
  /** What the other courses of a shelf may know of it; nothing is checked for it. */
  entry(): CourseEntry;
  /** `Course.siblings` */
  readonly siblings: Course['siblings'];
  /** The course for those who publish it; absent if a finding is an error. */
  checked(): CheckResult['checked'];
  /**
   * A print of a chapter as it was read and played, with all that this depends on: its text, the files beside it, the
   * side, and what other chapters say of its positions.
   */
  print(file: string): string;
  /**
   * A print of all that others may show of a chapter: not of its words outside of blocks, nor of where anything stands
   * in its file. The chapter is played for it.
   */
  face(file: string): string;
  /** What was done anew, for tests and for whoever wonders. */
  readonly work: Work;
}

/** The files of the chapters that were read, played and checked anew. */
export interface Work {
  readonly read: readonly string[];
  readonly played: readonly string[];
  readonly checked: readonly string[];
}

export interface WorkspaceOptions extends UpdateOptions {
  /** What an earlier process kept. */
  readonly kept?: Iterable<KeptChapter> | undefined;
  /** Whether drafts belong to the course, as for its author, or are left out, as for its readers; default `shown`. */
  readonly drafts?: 'shown' | 'left out' | undefined;
}

/**
 * A course that stays current: what has been read, played and found in a chapter is kept by its content and by
 * every answer that was used, so that a change costs the chapters that it touches.
 */
export interface Workspace {
  /** Makes the course current with these files. */
  update(files: CourseFiles): CurrentCourse;
  /** What is to be kept for another process. */
  kept(): Iterable<KeptChapter>;
}

export function createWorkspace({
  kept: before = [],
  drafts = 'shown',
  ...options
}: WorkspaceOptions = {}): Workspace {
  const first = [...before];
  let latest: Pick<Update, 'chapters' | 'soFar'> = { chapters: first, soFar: first };
  return {
    kept: () => latest.chapters,
    update(files) {
      // What nobody asked the findings of is not checked for the sake of what comes next.
      const known = new Map(latest.soFar.map((chapter) => [chapter.file, chapter]));
      const update = (given: CourseFiles, from: ReadonlyMap<string, KeptChapter>) => {
        const now = updateCourse(given, from, options);
        if (comparesFresh()) compareFresh(now, updateCourse(given, new Map(), options));
        return now;
      };
      const updated = withDrafts(drafts, files, known, update);
      latest = updated;
      return updated.current;
    },
  };
}
